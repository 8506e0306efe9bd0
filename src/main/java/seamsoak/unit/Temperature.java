package seamsoak.unit;

/**
 * A temperature.
 *
 * @param kelvin at least 0
 */
public record Temperature(double kelvin) {
  /** Where Celsius begins, K. */
  public static final double ZERO_CELSIUS = 273.15;

  private static final QuantityText ACCEPTED =
      new QuantityText("a temperature such as 2150 F, 1500 °F, 1177 C or 1450 K");
  private static final double HIGHEST_CELSIUS = 3000;

  public Temperature {
    if (QuantityText.finite(kelvin) < 0) {
      throw new IllegalArgumentException(kelvin + " K is below absolute zero");
    }
  }

  public static Temperature ofCelsius(double celsius) {
    return new Temperature(TemperatureScale.CELSIUS.kelvin(celsius));
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static Temperature parse(String text) {
    return of(text, Amount.read(text, ACCEPTED));
  }

  /** The same where a bare number is one of Fahrenheit or of Celsius. */
  public static Temperature parse(String text, UnitSystem bare) {
    return of(text, Amount.read(text, ACCEPTED).or(bare.bare("f", "c")));
  }

  private static Temperature of(String text, Amount amount) {
    TemperatureScale scale =
        TemperatureScale.of(amount.unit())
            .orElseThrow(() -> ACCEPTED.refuseUnit(text, amount.unit()));
    double kelvin = scale.kelvin(amount.value());
    if (kelvin < 0) {
      throw ACCEPTED.refuse(text, "is below absolute zero");
    }
    if (kelvin > TemperatureScale.CELSIUS.kelvin(HIGHEST_CELSIUS)) {
      throw ACCEPTED.refuse(text, "is hotter than any fire for steel");
    }
    return new Temperature(kelvin);
  }

  public double celsius() {
    return kelvin - ZERO_CELSIUS;
  }

  public double fahrenheit() {
    return kelvin * 1.8 - 459.67;
  }

  /** As a shop can hold it: to the nearest 5 F or 5 C. */
  public String format(UnitSystem units) {
    return units.show(
        Decimals.nearest(fahrenheit(), 5) + " F", Decimals.nearest(celsius(), 5) + " C");
  }
}
