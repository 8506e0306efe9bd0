package seamsoak.numeric;

import java.util.function.DoubleUnaryOperator;

/** Roots of functions of one variable. */
public final class Roots {
  private static final int MOST_STEPS = 200;

  private Roots() {}

  /**
   * A root of {@code f} between {@code low} and {@code high}, where it changes sign: regula falsi
   * in the Illinois form, halving when that stalls.
   *
   * @param tolerance width of the final bracket
   * @throws IllegalArgumentException when there is no change of sign
   */
  public static double between(DoubleUnaryOperator f, double low, double high, double tolerance) {
    double a = low;
    double b = high;
    double fa = f.applyAsDouble(a);
    double fb = f.applyAsDouble(b);
    if (fa == 0) {
      return a;
    }
    if (fb == 0) {
      return b;
    }
    if (!(fa * fb < 0)) {
      throw new IllegalArgumentException("no change of sign between " + low + " and " + high);
    }
    double wa = fa;
    double wb = fb;
    for (int i = 0; i < MOST_STEPS && Math.abs(b - a) > tolerance; i++) {
      double width = Math.abs(b - a);
      double x = i % 3 == 2 ? 0.5 * (a + b) : (a * wb - b * wa) / (wb - wa);
      if (!(Math.min(a, b) < x && x < Math.max(a, b))) {
        x = 0.5 * (a + b);
      }
      double fx = f.applyAsDouble(x);
      if (fx == 0) {
        return x;
      }
      if (fx * fa > 0) {
        a = x;
        fa = fx;
        wa = fx;
        wb *= 0.5;
      } else {
        b = x;
        wb = fx;
        wa *= 0.5;
      }
      if (Math.abs(b - a) >= width) {
        break;
      }
    }
    return 0.5 * (a + b);
  }
}
