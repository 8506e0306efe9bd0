package seamsoak.numeric;

/**
 * One step of TR-BDF2 (trapezoid, then second-order backward difference) for a {@link
 * ConservativeSystem}: second order, L-stable, stiffly accurate, with full Newton on a tridiagonal
 * matrix.
 *
 * <p>As a Runge-Kutta tableau with g = 2 - sqrt 2, d = g/2, w = sqrt(2)/4:
 *
 * <pre>
 *   0 | 0
 *   g | d  d
 *   1 | w  w  d
 *  -----------------------------------------
 *     | w          w          d        (2nd)
 *     | (1-w)/3    (3w+1)/3   d/3      (3rd)
 * </pre>
 *
 * R.E. Bank et al., IEEE Trans. CAD 4 (1985) 436; M.E. Hosea, L.F. Shampine, Appl. Numer. Math. 20
 * (1996) 21 (tableau from memory, its order is shown by a test).
 *
 * <p>Each stage is closed with the fluxes of the last linearization, so contents change by exactly
 * what crosses the outer faces, whatever is left of the Newton residual.
 */
public final class TrBdf2 {
  private static final double G = 2 - Math.sqrt(2);
  private static final double D = G / 2;
  private static final double W = Math.sqrt(2) / 4;
  private static final int MOST_NEWTON = 10;
  private static final double NEWTON_TOLERANCE = 0.03;

  /** How much worse the corrections may shrink than they did last time, as a power. */
  private static final double FORGETTING = 0.8;

  private final ConservativeSystem system;
  private final int n;
  private final double[] content;
  private final double[] size;
  private final double[] flux1;
  private final double[] byLeft;
  private final double[] byRight;
  private final double[] known;
  private final double[] middle;
  private final double[] before;
  private final Tridiagonal matrix;
  private double[] flux0;
  private double[] flux2;

  /** What is left to correct over the last correction, as last seen. */
  private double leftOver = Double.POSITIVE_INFINITY;

  private double firstFace;
  private double lastFace;
  private double error;

  public TrBdf2(ConservativeSystem system) {
    this.system = system;
    this.n = system.cells();
    content = new double[n];
    size = new double[n];
    flux0 = new double[n + 1];
    flux1 = new double[n + 1];
    flux2 = new double[n + 1];
    byLeft = new double[n + 1];
    byRight = new double[n + 1];
    known = new double[n];
    middle = new double[n];
    before = new double[n];
    matrix = new Tridiagonal(n);
  }

  /**
   * Advances {@code y} from {@code time} by {@code step}.
   *
   * @param y contents per size at the start
   * @param after receives the contents per size at the end
   * @return whether Newton converged; if not, {@code after} is worthless
   */
  public boolean step(double time, double step, double[] y, double[] after) {
    start(time, step, y);
    return stepOn(time, step, y, after);
  }

  private void start(double time, double step, double[] y) {
    system.beginStep(time, time + step);
    moveTo(time);
    system.fluxes(y, flux0, byLeft, byRight);
  }

  /** How many tolerances a second the fastest cell changes by at the start of a step. */
  public double speed(double time, double step, double[] y) {
    start(time, step, y);
    double most = 0;
    for (int i = 0; i < n; i++) {
      double change = Math.abs(flux0[i] - flux0[i + 1]) / size[i];
      most = Math.max(most, change / system.tolerance(i, y[i]));
    }
    return most;
  }

  /**
   * The same where the fluxes at the start are those of the try before, or after {@link #goOn} the
   * closing ones of the step before.
   */
  public boolean stepOn(double time, double step, double[] y, double[] after) {
    system.beginStep(time, time + step);
    moveTo(time);
    double weight = step * D;
    bringFirst(weight, y);
    if (!solveStage(time + G * step, weight, middle, flux1)) {
      return false;
    }
    bringSecond(step * W, y, after);
    if (!solveStage(time + step, weight, after, flux2)) {
      return false;
    }
    firstFace = step * (W * flux0[0] + W * flux1[0] + D * flux2[0]);
    lastFace = step * (W * flux0[n] + W * flux1[n] + D * flux2[n]);
    estimateError(step, after);
    return Double.isFinite(error);
  }

  /** What the first stage begins with; its first guess is the start. */
  private void bringFirst(double weight, double[] y) {
    for (int i = 0; i < n; i++) {
      content[i] = size[i] * y[i];
      known[i] = content[i] + weight * (flux0[i] - flux0[i + 1]);
      middle[i] = y[i];
    }
  }

  /** What the second stage begins with; its first guess goes on as the first stage went. */
  private void bringSecond(double weight, double[] y, double[] after) {
    for (int i = 0; i < n; i++) {
      known[i] = content[i] + weight * (flux0[i] - flux0[i + 1] + flux1[i] - flux1[i + 1]);
      after[i] = middle[i] + (middle[i] - y[i]) * (1 - G) / G;
    }
  }

  /** Takes the closing fluxes of the last step for those at the start of the next. */
  public void goOn() {
    double[] swap = flux0;
    flux0 = flux2;
    flux2 = swap;
  }

  /** One step of implicit Euler, the fallback where Newton fails on the second-order stages. */
  public boolean eulerStep(double time, double step, double[] y, double[] after) {
    system.beginStep(time, time + step);
    moveTo(time);
    for (int i = 0; i < n; i++) {
      known[i] = size[i] * y[i];
    }
    System.arraycopy(y, 0, after, 0, n);
    if (!solveStage(time + step, step, after, flux2)) {
      return false;
    }
    firstFace = step * flux2[0];
    lastFace = step * flux2[n];
    error = 0.5;
    return true;
  }

  /** What crossed the first face in the last step, positive into the chain. */
  public double throughFirstFace() {
    return firstFace;
  }

  /** What crossed the last face in the last step, positive out of the chain. */
  public double throughLastFace() {
    return lastFace;
  }

  /** Estimated local error of the last step over the tolerance; at most 1 is acceptable. */
  public double error() {
    return error;
  }

  private void moveTo(double time) {
    system.moveTo(time);
    system.sizes(size);
  }

  /**
   * Solves size y = known + weight (flux_i - flux_(i+1)) at a time; flux receives the closing
   * fluxes. Its loops are methods of their own, which the compiler then compiles once each.
   */
  private boolean solveStage(double time, double weight, double[] y, double[] flux) {
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
   * Back from the last cell: the fluxes move along their linearization, the contents by them.
   * Returns the largest change in tolerances.
   */
  private double correct(double weight, double[] y, double[] flux) {
    int end = n - 1;
    double right = matrix.back(end, 0);
    double change = Math.abs(right) / system.tolerance(end, y[end]);
    double out = flux[n] + byLeft[n] * right;
    flux[n] = out;
    for (int i = end - 1; i >= 0; i--) {
      double here = matrix.back(i, right);
      change = Math.max(change, Math.abs(here) / system.tolerance(i, y[i]));
      double in = flux[i + 1] + byLeft[i + 1] * here + byRight[i + 1] * right;
      y[i + 1] = (known[i + 1] + weight * (in - out)) / size[i + 1];
      flux[i + 1] = in;
      out = in;
      right = here;
    }
    double in = flux[0] + byRight[0] * right;
    y[0] = (known[0] + weight * (in - out)) / size[0];
    flux[0] = in;
    return change;
  }

  private void estimateError(double step, double[] after) {
    double e0 = step * ((1 - W) / 3 - W);
    double e1 = step * ((3 * W + 1) / 3 - W);
    double e2 = step * (D / 3 - D);
    // damped by the matrix of the last stage, which is that of the step's end
    for (int i = 0; i < n; i++) {
      matrix.right(
          i,
          e0 * (flux0[i] - flux0[i + 1])
              + e1 * (flux1[i] - flux1[i + 1])
              + e2 * (flux2[i] - flux2[i + 1]));
    }
    double worst = 0;
    double right = 0;
    for (int i = n - 1; i >= 0; i--) {
      right = matrix.back(i, right);
      worst = Math.max(worst, Math.abs(right) / system.tolerance(i, after[i]));
    }
    error = worst;
  }
}
