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

  private final ConservativeSystem system;
  private final int n;
  private final NewtonStage stage;

  /** Those of the stage. */
  private final double[] size;

  private final double[] known;
  private final double[] content;
  private final double[] flux1;
  private final double[] middle;

  /** How fast each cell went on to the end of the last step taken, per second. */
  private final double[] rate;

  private double[] flux0;
  private double[] flux2;

  private double secondsFromMiddle;
  private double firstFace;
  private double lastFace;
  private double error;

  public TrBdf2(ConservativeSystem system) {
    this.system = system;
    this.n = system.cells();
    stage = new NewtonStage(system);
    size = stage.size();
    known = stage.known();
    content = new double[n];
    flux0 = new double[n + 1];
    flux1 = new double[n + 1];
    flux2 = new double[n + 1];
    middle = new double[n];
    rate = new double[n];
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
    return stages(time, step, y, after);
  }

  private void start(double time, double step, double[] y) {
    system.beginStep(time, time + step);
    stage.moveTo(time);
    stage.fluxes(y, flux0);
  }

  /** How many tolerances a second the fastest cell changes by at the start of a step. */
  public double speed(double time, double step, double[] y) {
    start(time, step, y);
    for (int i = 0; i < n; i++) {
      known[i] = (flux0[i] - flux0[i + 1]) / size[i];
    }
    return system.largest(known, y);
  }

  /**
   * The same where the fluxes at the start are those of the try before, or after {@link #goOn} the
   * closing ones of the step before.
   */
  public boolean stepOn(double time, double step, double[] y, double[] after) {
    system.beginStep(time, time + step);
    stage.moveTo(time);
    stage.carryOn(y, flux0);
    return stages(time, step, y, after);
  }

  private boolean stages(double time, double step, double[] y, double[] after) {
    double weight = step * D;
    bringFirst(step, y);
    if (!stage.solve(time + G * step, weight, middle, flux1)) {
      return false;
    }
    bringSecond(step * W, y, after);
    if (!stage.solve(time + step, weight, after, flux2)) {
      return false;
    }
    secondsFromMiddle = (1 - G) * step;
    firstFace = step * (W * flux0[0] + W * flux1[0] + D * flux2[0]);
    lastFace = step * (W * flux0[n] + W * flux1[n] + D * flux2[n]);
    estimateError(step, after);
    return Double.isFinite(error);
  }

  /** What the first stage begins with; its first guess goes on as the last step ended. */
  private void bringFirst(double step, double[] y) {
    double weight = step * D;
    for (int i = 0; i < n; i++) {
      content[i] = size[i] * y[i];
      known[i] = content[i] + weight * (flux0[i] - flux0[i + 1]);
      middle[i] = y[i] + G * step * rate[i];
    }
  }

  /** What the second stage begins with; its first guess goes on as the first stage went. */
  private void bringSecond(double weight, double[] y, double[] after) {
    for (int i = 0; i < n; i++) {
      known[i] = content[i] + weight * (flux0[i] - flux0[i + 1] + flux1[i] - flux1[i + 1]);
      after[i] = middle[i] + (middle[i] - y[i]) * (1 - G) / G;
    }
  }

  /**
   * Takes the closing fluxes of the last step for those at the start of the next, and its course
   * for a first guess at the next one's.
   *
   * @param after contents per size that the last step ended with
   */
  public void goOn(double[] after) {
    double[] swap = flux0;
    flux0 = flux2;
    flux2 = swap;
    for (int i = 0; i < n; i++) {
      rate[i] = (after[i] - middle[i]) / secondsFromMiddle;
    }
  }

  /** One step of implicit Euler, the fallback where Newton fails on the second-order stages. */
  public boolean eulerStep(double time, double step, double[] y, double[] after) {
    system.beginStep(time, time + step);
    stage.moveTo(time);
    for (int i = 0; i < n; i++) {
      known[i] = size[i] * y[i];
    }
    System.arraycopy(y, 0, after, 0, n);
    if (!stage.solve(time + step, step, after, flux2)) {
      return false;
    }
    System.arraycopy(y, 0, middle, 0, n);
    secondsFromMiddle = step;
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

  private void estimateError(double step, double[] after) {
    double e0 = step * ((1 - W) / 3 - W);
    double e1 = step * ((3 * W + 1) / 3 - W);
    double e2 = step * (D / 3 - D);
    // damped by the matrix of the last stage, which is that of the step's end
    for (int i = 0; i < n; i++) {
      known[i] =
          e0 * (flux0[i] - flux0[i + 1])
              + e1 * (flux1[i] - flux1[i + 1])
              + e2 * (flux2[i] - flux2[i + 1]);
    }
    error = stage.damped(after);
  }
}
