package seamsoak.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers with a decimal point, whatever the machine's language. */
final class Decimals {
  private Decimals() {}

  /** Exactly that many decimals. */
  static String fixed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.toPlainString();
  }

  /** At most that many decimals, without trailing zeros. */
  static String upTo(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** The nearest multiple of a whole step. */
  static String nearest(double value, int step) {
    return Long.toString(step * Math.round(value / step));
  }
}
