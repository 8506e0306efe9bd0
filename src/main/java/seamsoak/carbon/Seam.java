package seamsoak.carbon;

/**
 * Carbon across a face between two unlike metals: the activity there is the one for which both half
 * cells carry the same flux.
 *
 * <p>No metal's activity rises above its highest level. Where the other side brings more than a
 * half cell can carry on at that level, the interface stays at it and the rest is left as carbide
 * in the first cell: the flux is then what the other side brings.
 */
final class Seam {
  private static final int MOST_ITERATIONS = 60;
  private static final double TOLERANCE = 1e-8;

  /** The interface as last found: the first guess of the next time. */
  private double activity = Double.NaN;

  private double leftRatio;
  private double rightRatio;
  private double flux;
  private double byLeft;
  private double byRight;

  /** One side: its law, its cell's state, and 2 over its cell's thickness. */
  record Side(CarbonLaw.At law, double ratio, double potential, double slope, double perMetre) {
    double outOf(double activity) {
      return outTo(law.ratioAt(activity));
    }

    /** What flows out of the cell to an interface with that carbon. */
    double outTo(double interfaceRatio) {
      return perMetre * (potential - law.potential(interfaceRatio));
    }
  }

  /** Finds the flux from left to right; the last activity found is the first guess of the next. */
  void solve(Side left, Side right) {
    double al = left.law.activity(left.ratio);
    double ar = right.law.activity(right.ratio);
    double low = Math.min(al, ar);
    double high = Math.max(al, ar);
    double leftMost = left.law.mostActivity();
    double rightMost = right.law.mostActivity();
    double most = Math.min(leftMost, rightMost);
    if (high > most) {
      high = most;
      if (left.outOf(most) + right.outOf(most) > 0) {
        saturated(left, right, leftMost < rightMost, most);
        return;
      }
    }
    double a = activity >= low && activity <= high ? activity : 0.5 * (low + high);
    double yl = leftRatio > 0 ? leftRatio : left.ratio;
    double yr = rightRatio > 0 ? rightRatio : right.ratio;
    double ml = 0;
    double mr = 0;
    double fromLeft = 0;
    double fromRight = 0;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      yl = left.law.ratioNear(a, yl);
      yr = right.law.ratioNear(a, yr);
      ml = left.perMetre * left.law.mobility(yl);
      mr = right.perMetre * right.law.mobility(yr);
      fromLeft = left.outTo(yl);
      fromRight = right.outTo(yr);
      double residual = fromLeft + fromRight;
      if (residual > 0) {
        low = a;
      } else {
        high = a;
      }
      double next = a + residual / (ml + mr);
      if (!(next >= low && next <= high)) {
        next = 0.5 * (low + high);
      }
      double change = Math.abs(next - a);
      a = next;
      // the weighted flux below is right to the square of this
      if (change <= TOLERANCE * high || high - low <= 1e-14 * high) {
        break;
      }
    }
    activity = a;
    leftRatio = yl;
    rightRatio = yr;
    // weighted so that what is left of the residual does not show
    double sum = ml + mr;
    flux = sum > 0 ? (mr * fromLeft - ml * fromRight) / sum : 0.5 * (fromLeft - fromRight);
    byLeft = sum > 0 ? left.perMetre * left.slope * mr / sum : 0;
    byRight = sum > 0 ? -right.perMetre * right.slope * ml / sum : 0;
  }

  private void saturated(Side left, Side right, boolean leftIs, double most) {
    activity = most;
    flux = leftIs ? -right.outOf(most) : left.outOf(most);
    byLeft = leftIs ? 0 : left.perMetre * left.slope;
    byRight = leftIs ? -right.perMetre * right.slope : 0;
  }

  double activity() {
    return activity;
  }

  /** Flux from left to right. */
  double flux() {
    return flux;
  }

  /** Derivative of the flux by the left cell's ratio. */
  double byLeft() {
    return byLeft;
  }

  /** Derivative of the flux by the right cell's ratio. */
  double byRight() {
    return byRight;
  }
}
