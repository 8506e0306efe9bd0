package seamsoak.steel;

/**
 * A published range of temperature.
 *
 * @param lowC lower end, degrees Celsius
 * @param highC upper end, degrees Celsius; equal to the lower when a single figure was published
 */
public record TemperatureRange(double lowC, double highC) {
  /** Half-way, degrees Celsius. */
  public double middleC() {
    return 0.5 * (lowC + highC);
  }
}
