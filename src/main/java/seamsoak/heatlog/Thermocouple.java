package seamsoak.heatlog;

import java.util.OptionalDouble;
import seamsoak.source.Standing;

/**
 * A type and class of thermocouple.
 *
 * @param type letter of the type, such as K
 * @param grade its class, such as {@code standard}
 * @param leastKelvin how far new wire may be off at least, K
 * @param percent of the reading in Celsius, where that is more; 0 for none
 * @param beyondCelsius from where the error rises straight
 * @param beyondPerKelvin how fast
 * @param toCelsius as far as that is stated
 * @param rangeCelsius highest reading that counts
 * @param driftKelvin how high it may read when it was used hot before
 */
public record Thermocouple(
    String type,
    String grade,
    double leastKelvin,
    double percent,
    OptionalDouble beyondCelsius,
    double beyondPerKelvin,
    double toCelsius,
    double rangeCelsius,
    double driftKelvin,
    String source,
    Standing standing) {

  /** How far a new one may be off, K. */
  public double toleranceKelvin(double celsius) {
    double beyond =
        beyondCelsius.isPresent()
            ? beyondPerKelvin * Math.max(0, celsius - beyondCelsius.getAsDouble())
            : 0;
    return Math.max(leastKelvin + beyond, percent / 100 * Math.abs(celsius));
  }
}
