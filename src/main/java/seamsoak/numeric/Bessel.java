package seamsoak.numeric;

/**
 * Bessel functions of the first kind by their power series (Abramowitz and Stegun 9.1.10). Meant
 * for arguments up to about 15, where twelve digits are left.
 */
public final class Bessel {
  private Bessel() {}

  /** J0. */
  public static double j0(double x) {
    return series(x, 0);
  }

  /** J1. */
  public static double j1(double x) {
    return x / 2 * series(x, 1);
  }

  /** Sum of (-x^2/4)^k / (k! (k + order)!). */
  private static double series(double x, int order) {
    double square = -x * x / 4;
    double term = 1;
    double sum = 1;
    for (int k = 1; Math.abs(term) > 1e-18 * Math.abs(sum) && k < 200; k++) {
      term *= square / (k * (double) (k + order));
      sum += term;
    }
    return sum;
  }
}
