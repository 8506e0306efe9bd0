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
  private static final int MOST_SMOOTH = 6;

  /** A last correction that small, relative, leaves the flux off by about its square. */
  private static final double SMOOTH_TOLERANCE = 1e-5;

  /** The interface as last found: the first guess of the next time. */
  private double activity = Double.NaN;

  private double leftRatio;
  private double rightRatio;
  private double flux;
  private double byLeft;
  private double byRight;

  /** One side: its law, its cell's state, and 2 over its cell's thickness. */
  record Side(
      CarbonLaw.Isotherm law, double ratio, double potential, double slope, double perMetre) {
    double outOf(double activity) {
      return outTo(law.ratioAt(activity));
    }

    /** What flows out of the cell to an interface with that carbon. */
    double outTo(double interfaceRatio) {
      return perMetre * (potential - law.potential(interfaceRatio));
    }
  }

  /** Finds the flux from left to right; what was found last is the first guess of the next. */
  void solve(Side left, Side right) {
    if (!solveSmooth(left, right)) {
      solveAny(left, right);
    }
  }

  /**
   * Newton on the carbon of both faces at once, equal activity and equal flux, where both metals
   * are one phase each; the flux follows along the last correction. Returns whether that worked.
   */
  private boolean solveSmooth(Side left, Side right) {
    CarbonLaw.Isotherm l = left.law;
    CarbonLaw.Isotherm r = right.law;
    if (!l.isSmooth(left.ratio) || !r.isSmooth(right.ratio)) {
      return false;
    }
    double yl = leftRatio > 0 ? leftRatio : left.ratio;
    double yr = rightRatio > 0 ? rightRatio : right.ratio;
    for (int i = 0; i < MOST_SMOOTH && l.isSmooth(yl) && r.isSmooth(yr); i++) {
      double lnSlope = l.lnActivitySlope(yl);
      double rnSlope = r.lnActivitySlope(yr);
      double ease = left.perMetre * l.potentialSlope(yl);
      double ml = ease / lnSlope;
      double mr = right.perMetre * r.potentialSlope(yr) / rnSlope;
      double ln = l.lnActivity(yl);
      double fromLeft = left.outTo(yl);
      double step = r.lnActivity(yr) - ln;
      // both corrections carry the logarithm of the activity to the same value
      double rise = (fromLeft + right.outTo(yr) + mr * step) / (ml + mr);
      double dl = rise / lnSlope;
      double dr = (rise - step) / rnSlope;
      if (Math.abs(dl) <= SMOOTH_TOLERANCE * yl && Math.abs(dr) <= SMOOTH_TOLERANCE * yr) {
        leftRatio = yl + dl;
        rightRatio = yr + dr;
        activity = Math.exp(ln + rise);
        flux = fromLeft - ease * dl;
        byLeft = left.perMetre * left.slope * mr / (ml + mr);
        byRight = -right.perMetre * right.slope * ml / (ml + mr);
        return true;
      }
      yl += dl;
      yr += dr;
    }
    return false;
  }

  private void solveAny(Side left, Side right) {
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
