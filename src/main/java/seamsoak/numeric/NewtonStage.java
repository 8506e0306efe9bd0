package seamsoak.numeric;

/**
 * One implicit stage of a step for a {@link ConservativeSystem}: full Newton on a tridiagonal
 * matrix, closed with the fluxes of the last linearization, so that contents change by exactly what
 * crosses the faces, whatever is left of the residual.
 */
final class NewtonStage {
  private static final int MOST_NEWTON = 10;
  private static final double NEWTON_TOLERANCE = 0.03;

  /** How much worse the corrections may shrink than they did last time, as a power. */
  private static final double FORGETTING = 0.8;

  private final ConservativeSystem system;
  private final int n;
  private final double[] size;
  private final double[] known;
  private final double[] byLeft;
  private final double[] byRight;
  private final double[] before;
  private final Tridiagonal matrix;

  /** What is left to correct over the last correction, as last seen. */
  private double leftOver = Double.POSITIVE_INFINITY;

  NewtonStage(ConservativeSystem system) {
    this.system = system;
    n = system.cells();
    size = new double[n];
    known = new double[n];
    byLeft = new double[n + 1];
    byRight = new double[n + 1];
    before = new double[n];
    matrix = new Tridiagonal(n);
  }

  /** Sizes of the cells at the time last moved to. */
  double[] size() {
    return size;
  }

  /** What the next stage begins with, to be filled in. */
  double[] known() {
    return known;
  }

  void moveTo(double time) {
    system.moveTo(time);
    system.sizes(size);
  }

  void fluxes(double[] y, double[] flux) {
    system.fluxes(y, flux, byLeft, byRight);
  }

  void carryOn(double[] y, double[] flux) {
    system.carryOn(y, flux, byLeft, byRight);
  }

  /**
   * Solves size y = known + weight (flux_i - flux_(i+1)) at a time; flux receives the closing
   * fluxes. Its loops are methods of their own, which the compiler then compiles once each.
   */
  boolean solve(double time, double weight, double[] y, double[] flux) {
    moveTo(time);
    double last = Double.POSITIVE_INFINITY;
    for (int k = 0; k < MOST_NEWTON; k++) {
      system.fluxes(y, flux, byLeft, byRight);
      eliminate(weight, y, flux);
      System.arraycopy(y, 0, before, 0, n);
      double change = correct(weight, y, flux);
      if (!(change < 1e12) || (k > 3 && change > 2 * last)) {
        break;
      }
      // what is left after this correction, judged by how fast the corrections shrink, at first by
      // how fast they last did
      if (last < Double.POSITIVE_INFINITY) {
        double rate = change / last;
        leftOver = rate < 1 ? rate / (1 - rate) : Double.POSITIVE_INFINITY;
      } else if (k == 0 && leftOver < 1) {
        leftOver = Math.pow(leftOver, FORGETTING);
      }
      if (change <= NEWTON_TOLERANCE) {
        return true;
      }
      // beyond a bend the last linearization says nothing of what is left
      if (system.stopAtBends(before, y)) {
        leftOver = Double.POSITIVE_INFINITY;
        last = Double.POSITIVE_INFINITY;
        continue;
      }
      if (change * leftOver <= NEWTON_TOLERANCE) {
        return true;
      }
      last = change;
    }
    leftOver = Double.POSITIVE_INFINITY;
    return false;
  }

  /** Rows of size - weight d(flux_i - flux_(i+1))/dy against what the stage still lacks. */
  private void eliminate(double weight, double[] y, double[] flux) {
    double in = flux[0];
    double right = byRight[0];
    double left = byLeft[0];
    for (int i = 0; i < n; i++) {
      double out = flux[i + 1];
      double nextLeft = byLeft[i + 1];
      double nextRight = byRight[i + 1];
      matrix.row(
          i,
          -weight * left,
          size[i] - weight * (right - nextLeft),
          weight * nextRight,
          known[i] + weight * (in - out) - size[i] * y[i]);
      in = out;
      left = nextLeft;
      right = nextRight;
    }
  }

  /**
   * The fluxes move along their linearization, the contents by them. Returns the largest change in
   * tolerances.
   */
  private double correct(double weight, double[] y, double[] flux) {
    double[] change = matrix.solved();
    double most = system.largest(change, y);
    double in = flux[0] + byRight[0] * change[0];
    flux[0] = in;
    for (int i = 0; i < n; i++) {
      double out = flux[i + 1] + byLeft[i + 1] * change[i];
      if (i + 1 < n) {
        out += byRight[i + 1] * change[i + 1];
      }
      flux[i + 1] = out;
      y[i] = (known[i] + weight * (in - out)) / size[i];
      in = out;
    }
    return most;
  }

  /** The largest of what {@link #known} holds, damped by the matrix of the last stage, over y. */
  double damped(double[] y) {
    for (int i = 0; i < n; i++) {
      matrix.right(i, known[i]);
    }
    return system.largest(matrix.solved(), y);
  }
}
