package seamsoak.unit;

/**
 * How far apart two temperatures are. Not a temperature: converting it adds no 32 and no 273.15.
 *
 * @param kelvin the same number in degrees Celsius; may be negative
 */
public record TemperatureDifference(double kelvin) {
  public TemperatureDifference {
    QuantityText.finite(kelvin);
  }

  public double fahrenheit() {
    return kelvin * 1.8;
  }

  /** To the nearest degree. */
  public String format(UnitSystem units) {
    return units.show(Decimals.nearest(fahrenheit(), 1) + " F", Decimals.nearest(kelvin, 1) + " C");
  }
}
