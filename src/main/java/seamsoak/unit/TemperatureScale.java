package seamsoak.unit;

import java.util.Optional;

/** The scales a temperature or a difference of temperatures is written in. */
enum TemperatureScale {
  CELSIUS(1, Temperature.ZERO_CELSIUS),
  FAHRENHEIT(1.8, 459.67),
  KELVIN(1, 0);

  private final double degreesPerKelvin;
  private final double zeroAboveAbsolute;

  TemperatureScale(double degreesPerKelvin, double zeroAboveAbsolute) {
    this.degreesPerKelvin = degreesPerKelvin;
    this.zeroAboveAbsolute = zeroAboveAbsolute;
  }

  /** The scale of a written unit, such as {@code °f} or {@code degc}. */
  static Optional<TemperatureScale> of(String unit) {
    return switch (unit.replaceFirst("^(°|degrees?|deg\\.?)\\s*", "")) {
      case "c", "celsius" -> Optional.of(CELSIUS);
      case "f", "fahrenheit" -> Optional.of(FAHRENHEIT);
      case "k", "kelvin" -> Optional.of(KELVIN);
      default -> Optional.empty();
    };
  }

  double kelvin(double reading) {
    return (reading + zeroAboveAbsolute) / degreesPerKelvin;
  }

  double kelvinDifference(double degrees) {
    return degrees / degreesPerKelvin;
  }
}
