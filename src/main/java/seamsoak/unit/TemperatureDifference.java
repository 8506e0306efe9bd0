package seamsoak.unit;

/**
 * How far apart two temperatures are. Not a temperature: converting it adds no 32 and no 273.15.
 *
 * @param kelvin the same number in degrees Celsius; may be negative
 */
public record TemperatureDifference(double kelvin) {
  private static final Accepted ACCEPTED =
      new Accepted("a difference of temperatures such as 27 F or 15 C");
  private static final double LARGEST_KELVIN = 3000;

  public TemperatureDifference {
    Accepted.finite(kelvin);
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static TemperatureDifference parse(String text) {
    Amount amount = Amount.read(text, ACCEPTED);
    TemperatureScale scale =
        TemperatureScale.of(amount.unit())
            .orElseThrow(() -> ACCEPTED.refuseUnit(text, amount.unit()));
    double kelvin = scale.kelvinDifference(amount.value());
    if (Math.abs(kelvin) > LARGEST_KELVIN) {
      throw ACCEPTED.refuse(text, "is wider than any two temperatures of steel");
    }
    return new TemperatureDifference(kelvin);
  }

  public double fahrenheit() {
    return kelvin * 1.8;
  }

  /** To the nearest degree. */
  public String format(UnitSystem units) {
    return units.show(Decimals.nearest(fahrenheit(), 1) + " F", Decimals.nearest(kelvin, 1) + " C");
  }
}
