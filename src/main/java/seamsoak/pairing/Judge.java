package seamsoak.pairing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;
import seamsoak.unit.TemperatureDifference;
import seamsoak.unit.UnitSystem;

/**
 * Holds values against limits and puts the finding into words.
 *
 * @param limits of every check
 * @param units to speak in
 */
public record Judge(PairLimits limits, UnitSystem units) {
  private static final String CELSIUS = "C";
  private static final String MILLIONTHS = "1e-6/K";

  /** Two values and what is rated of them. */
  Finding values(String check, double first, double second, double rated, String says) {
    return finding(
        check, first, second, Math.abs(first - second), List.of(), List.of(), rated, says);
  }

  /** Two ranges of temperature, of which the overlap is rated. */
  Finding overlap(String check, TemperatureRange first, TemperatureRange second, String says) {
    double overlap = overlap(first, second);
    return ranges(check, first, second, overlap, says);
  }

  /** Two ranges of temperature, of which the distance is rated. */
  Finding miss(String check, TemperatureRange first, TemperatureRange second, String says) {
    return ranges(check, first, second, Math.max(0, -overlap(first, second)), says);
  }

  private Finding ranges(
      String check, TemperatureRange first, TemperatureRange second, double rated, String says) {
    return finding(
        check,
        middle(first),
        middle(second),
        Math.max(0, -overlap(first, second)),
        List.of(first.lowC(), first.highC()),
        List.of(second.lowC(), second.highC()),
        rated,
        says);
  }

  private Finding finding(
      String check,
      double first,
      double second,
      double gap,
      List<Double> firstRange,
      List<Double> secondRange,
      double rated,
      String says) {
    PairLimit limit = limits.of(check);
    return new Finding(
        check,
        limit.title(),
        limit.rate(rated),
        first,
        second,
        gap,
        limit.unit(),
        firstRange,
        secondRange,
        rated,
        limit.watch(),
        limit.clash(),
        says + limits(limit),
        limit.source(),
        limit.standing().words());
  }

  /** How far two ranges overlap; negative by how far they miss each other. */
  static double overlap(TemperatureRange first, TemperatureRange second) {
    return Math.min(first.highC(), second.highC()) - Math.max(first.lowC(), second.lowC());
  }

  /** The middle of what two ranges share, or of the gap between them. */
  static double common(TemperatureRange first, TemperatureRange second) {
    return 0.5 * (Math.min(first.highC(), second.highC()) + Math.max(first.lowC(), second.lowC()));
  }

  static double middle(TemperatureRange range) {
    return 0.5 * (range.lowC() + range.highC());
  }

  String at(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  String apart(double kelvin) {
    return new TemperatureDifference(kelvin).format(units);
  }

  String from(TemperatureRange range) {
    return range.lowC() == range.highC()
        ? at(range.lowC())
        : at(range.lowC()) + " to " + at(range.highC());
  }

  static String number(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private String limits(PairLimit limit) {
    if (limit.watch().isEmpty() && limit.clash().isEmpty()) {
      return "";
    }
    String side = limit.above() ? " above " : " below ";
    StringBuilder words = new StringBuilder(" Limit:");
    limit.watch().ifPresent(w -> words.append(" watch").append(side).append(shown(limit, w)));
    limit
        .clash()
        .ifPresent(
            c ->
                words
                    .append(limit.watch().isPresent() ? "," : "")
                    .append(" clash")
                    .append(side)
                    .append(shown(limit, c)));
    return words.append(" (").append(limit.standing().words()).append(").").toString();
  }

  private String shown(PairLimit limit, double value) {
    if (limit.unit().equals(CELSIUS)) {
      return apart(value);
    }
    String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return switch (limit.unit()) {
      case "" -> number;
      case MILLIONTHS -> number + " millionths";
      default -> number + " " + limit.unit();
    };
  }
}
