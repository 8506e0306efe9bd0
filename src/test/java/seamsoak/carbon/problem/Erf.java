package seamsoak.carbon.problem;

/** The error function: its power series near zero, its continued fraction further out. */
public final class Erf {
  private static final double SERIES_UP_TO = 2.5;

  private Erf() {}

  public static double erf(double x) {
    if (Math.abs(x) > SERIES_UP_TO) {
      return x > 0 ? 1 - erfc(x) : erfc(-x) - 1;
    }
    double term = x;
    double sum = x;
    for (int n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
      term *= -x * x / n;
      sum += term / (2 * n + 1);
    }
    return 2 / Math.sqrt(Math.PI) * sum;
  }

  public static double erfc(double x) {
    if (x < SERIES_UP_TO) {
      return 1 - erf(x);
    }
    double fraction = 0;
    for (int k = 80; k >= 1; k--) {
      fraction = 0.5 * k / (x + fraction);
    }
    return Math.exp(-x * x) / Math.sqrt(Math.PI) / (x + fraction);
  }
}
