package seamsoak.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/**
 * Numbers as a shop reads them: temperatures to 5 degrees, whole minutes, thousandths of an inch,
 * hundredths of a millimetre.
 *
 * @param units which of the two systems, or both
 */
record Numbers(UnitSystem units) {
  static final String UNKNOWN = "-";
  private static final MathContext SIX_DIGITS = new MathContext(6);

  String temperature(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  String length(double millimetres) {
    return Length.ofMillimetres(millimetres).format(units);
  }

  /** A time that somebody stated. */
  String stated(double minutes) {
    return TimeSpan.ofMinutes(minutes).format(units);
  }

  /** A time that was computed. */
  String time(double minutes) {
    return minutes > 0 && minutes < 0.5
        ? "under 1 min"
        : TimeSpan.ofMinutes(Math.round(minutes)).format(units);
  }

  static String percent(double value) {
    return number(value, 2);
  }

  /** Rounded from six digits, so that 0.965 reads the same before and after a trace has left. */
  static String number(double value, int decimals) {
    BigDecimal digits = BigDecimal.valueOf(value).round(SIX_DIGITS);
    BigDecimal rounded = digits.setScale(decimals, RoundingMode.HALF_UP);
    return rounded.toPlainString();
  }

  /** To 5 degrees, as a shop can hold. */
  static String toFive(double degrees) {
    return Long.toString(5 * Math.round(degrees / 5));
  }

  /** Minutes of which nothing is known but that they are more than a day. */
  static String minutesCell(Optional<Double> minutes, boolean roundUp) {
    return minutes
        .map(m -> Long.toString((long) (roundUp ? Math.ceil(m) : Math.floor(m))))
        .orElse(">24 h");
  }
}
