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
  private static final int MOST_NEWTON = 8;
  private static final double NEWTON_TOLERANCE = 0.03;

  private final ConservativeSystem system;
  private final int n;
  private final double[] flux0;
  private final double[] flux1;
  private final double[] flux2;
  private final double[] byLeft;
  private final double[] byRight;
  private final double[] lower;
  private final double[] diagonal;
  private final double[] upper;
  private final double[] right;
  private final double[] known;
  private final double[] middle;
  private double firstFace;
  private double lastFace;
  private double error;

  public TrBdf2(ConservativeSystem system) {
    this.system = system;
    this.n = system.cells();
    flux0 = new double[n + 1];
    flux1 = new double[n + 1];
    flux2 = new double[n + 1];
    byLeft = new double[n + 1];
    byRight = new double[n + 1];
    lower = new double[n];
    diagonal = new double[n];
    upper = new double[n];
    right = new double[n];
    known = new double[n];
    middle = new double[n];
  }

  /**
   * Advances {@code y} from {@code time} by {@code step}.
   *
   * @param y contents per size at the start
   * @param after receives the contents per size at the end
   * @return whether Newton converged; if not, {@code after} is worthless
   */
  public boolean step(double time, double step, double[] y, double[] after) {
    system.beginStep(time, time + step);
    system.moveTo(time);
    system.fluxes(y, flux0, byLeft, byRight);
    for (int i = 0; i < n; i++) {
      known[i] = system.size(i) * y[i];
    }
    stageStart(step * D, flux0, step * D, null);
    System.arraycopy(y, 0, middle, 0, n);
    if (!solveStage(time + G * step, step * D, middle, flux1)) {
      return false;
    }
    system.moveTo(time);
    for (int i = 0; i < n; i++) {
      known[i] = system.size(i) * y[i];
    }
    stageStart(step * W, flux0, step * W, flux1);
    for (int i = 0; i < n; i++) {
      after[i] = middle[i] + (middle[i] - y[i]) * (1 - G) / G;
    }
    if (!solveStage(time + step, step * D, after, flux2)) {
      System.arraycopy(middle, 0, after, 0, n);
      if (!solveStage(time + step, step * D, after, flux2)) {
        return false;
      }
    }
    firstFace = step * (W * flux0[0] + W * flux1[0] + D * flux2[0]);
    lastFace = step * (W * flux0[n] + W * flux1[n] + D * flux2[n]);
    estimateError(step, after);
    return Double.isFinite(error);
  }

  /** One step of implicit Euler, the fallback where Newton fails on the second-order stages. */
  public boolean eulerStep(double time, double step, double[] y, double[] after) {
    system.beginStep(time, time + step);
    system.moveTo(time);
    for (int i = 0; i < n; i++) {
      known[i] = system.size(i) * y[i];
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

  private void stageStart(double w0, double[] f0, double w1, double[] f1) {
    for (int i = 0; i < n; i++) {
      known[i] += w0 * (f0[i] - f0[i + 1]);
      if (f1 != null) {
        known[i] += w1 * (f1[i] - f1[i + 1]);
      }
    }
  }

  /**
   * Solves size y = known + weight (flux_i - flux_(i+1)) at a time; flux receives the closing
   * fluxes.
   */
  private boolean solveStage(double time, double weight, double[] y, double[] flux) {
    system.moveTo(time);
    double last = Double.POSITIVE_INFINITY;
    for (int k = 0; k < MOST_NEWTON; k++) {
      system.fluxes(y, flux, byLeft, byRight);
      assemble(weight);
      for (int i = 0; i < n; i++) {
        right[i] = known[i] + weight * (flux[i] - flux[i + 1]) - system.size(i) * y[i];
      }
      Tridiagonal.solve(lower, diagonal, upper, right);
      double change = 0;
      for (int i = 0; i < n; i++) {
        change = Math.max(change, Math.abs(right[i]) / system.tolerance(i, y[i]));
      }
      if (!(change < 1e12) || (k > 3 && change > 2 * last)) {
        return false;
      }
      for (int f = 0; f <= n; f++) {
        flux[f] += (f > 0 ? byLeft[f] * right[f - 1] : 0) + (f < n ? byRight[f] * right[f] : 0);
      }
      for (int i = 0; i < n; i++) {
        y[i] = (known[i] + weight * (flux[i] - flux[i + 1])) / system.size(i);
      }
      // what is left after this correction, judged by how fast the corrections shrink
      double rate = k == 0 ? 1 : change / last;
      double left = rate < 1 ? rate / (1 - rate) * change : change;
      if (Math.min(change, left) <= NEWTON_TOLERANCE) {
        return true;
      }
      last = change;
    }
    return false;
  }

  /** Matrix of size - weight d(flux_i - flux_(i+1))/dy. */
  private void assemble(double weight) {
    for (int i = 0; i < n; i++) {
      lower[i] = -weight * byLeft[i];
      diagonal[i] = system.size(i) - weight * (byRight[i] - byLeft[i + 1]);
      upper[i] = weight * byRight[i + 1];
    }
  }

  private void estimateError(double step, double[] after) {
    double e0 = step * ((1 - W) / 3 - W);
    double e1 = step * ((3 * W + 1) / 3 - W);
    double e2 = step * (D / 3 - D);
    for (int i = 0; i < n; i++) {
      right[i] =
          e0 * (flux0[i] - flux0[i + 1])
              + e1 * (flux1[i] - flux1[i + 1])
              + e2 * (flux2[i] - flux2[i + 1]);
    }
    assemble(step * D);
    Tridiagonal.solve(lower, diagonal, upper, right);
    double worst = 0;
    for (int i = 0; i < n; i++) {
      worst = Math.max(worst, Math.abs(right[i]) / system.tolerance(i, after[i]));
    }
    error = worst;
  }
}
