package seamsoak.unit;

/** To be completed: parse and format. */
public record Temperature(double kelvin) {
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius + 273.15);
  }

  public double celsius() {
    return kelvin - 273.15;
  }

  public double fahrenheit() {
    return celsius() * 1.8 + 32;
  }
}
