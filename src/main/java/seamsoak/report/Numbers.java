package seamsoak.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
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

  List<String> temperatureHeads(String name) {
    return pick(name + " F", units == UnitSystem.BOTH ? "C" : name + " C");
  }

  /** One cell or two, to 5 degrees. */
  List<String> temperatureCells(double celsius) {
    return pick(
        Long.toString(5 * Math.round(Temperature.ofCelsius(celsius).fahrenheit() / 5)),
        Long.toString(5 * Math.round(celsius / 5)));
  }

  /** A dash where a temperature would stand. */
  List<String> unknownTemperature() {
    return pick(UNKNOWN, UNKNOWN);
  }

  List<String> lengthHeads(String name) {
    return pick(name + " in", units == UnitSystem.BOTH ? "mm" : name + " mm");
  }

  /** One cell or two, for small lengths. */
  List<String> lengthCells(Optional<Double> millimetres) {
    return millimetres
        .map(mm -> pick(number(Length.ofMillimetres(mm).inches(), 3), number(mm, 2)))
        .orElseGet(() -> pick(UNKNOWN, UNKNOWN));
  }

  /** One cell or two, for the size of a bar. */
  List<String> sizeCells(double millimetres) {
    return pick(
        number(Length.ofMillimetres(millimetres).inches(), 2),
        number(millimetres, millimetres < 1000 ? 1 : 0));
  }

  /** Minutes of which nothing is known but that they are more than a day. */
  static String minutesCell(Optional<Double> minutes, boolean roundUp) {
    return minutes
        .map(m -> Long.toString((long) (roundUp ? Math.ceil(m) : Math.floor(m))))
        .orElse(">24 h");
  }

  /** One cell or two. */
  List<String> pick(String us, String metric) {
    return switch (units) {
      case US -> List.of(us);
      case METRIC -> List.of(metric);
      case BOTH -> List.of(us, metric);
    };
  }
}
