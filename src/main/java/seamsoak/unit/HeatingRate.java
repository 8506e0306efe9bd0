package seamsoak.unit;

import java.util.Map;

/**
 * How fast a temperature climbs or falls.
 *
 * @param kelvinPerHour above 0
 */
public record HeatingRate(double kelvinPerHour) {
  private static final QuantityText ACCEPTED =
      new QuantityText("a rate such as 1000 F/h, 500 C/h or 10 C/min");
  private static final Map<String, Double> PER_HOUR =
      Map.of("h", 1.0, "hr", 1.0, "hour", 1.0, "min", 60.0, "minute", 60.0);
  private static final double FASTEST = 1e5;

  public HeatingRate {
    if (!(QuantityText.finite(kelvinPerHour) > 0)) {
      throw new IllegalArgumentException(kelvinPerHour + " K/h is no rate");
    }
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static HeatingRate parse(String text) {
    Amount amount = Amount.read(text, ACCEPTED);
    String[] parts = amount.unit().split("\\s*(?:/|\\bper\\b)\\s*", -1);
    if (parts.length != 2 || !PER_HOUR.containsKey(parts[1])) {
      throw ACCEPTED.refuseUnit(text, amount.unit());
    }
    TemperatureScale scale =
        TemperatureScale.of(parts[0]).orElseThrow(() -> ACCEPTED.refuseUnit(text, amount.unit()));
    double perHour = scale.kelvinDifference(amount.value()) * PER_HOUR.get(parts[1]);
    if (!(perHour > 0 && perHour <= FASTEST)) {
      throw ACCEPTED.refuse(text, "is not above zero, or faster than any fire");
    }
    return new HeatingRate(perHour);
  }

  public double fahrenheitPerHour() {
    return kelvinPerHour * 1.8;
  }

  /** To 5 degrees from 50 on, to one below. */
  public String format(UnitSystem units) {
    return units.show(shown(fahrenheitPerHour()) + " F", shown(kelvinPerHour) + " C") + " per hour";
  }

  private static String shown(double degrees) {
    return Decimals.nearest(degrees, degrees < 50 ? 1 : 5);
  }
}
