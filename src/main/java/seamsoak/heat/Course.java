package seamsoak.heat;

import java.util.Arrays;

/**
 * A temperature through time, straight between its corners, level before the first and after the
 * last.
 */
public final class Course {
  /** Nearer than that to a corner counts as there. */
  private static final double CLOSE_SECONDS = 1e-9;

  private final double[] seconds;
  private final double[] kelvin;

  private Course(double[] seconds, double[] kelvin) {
    this.seconds = seconds;
    this.kelvin = kelvin;
  }

  /**
   * Through corners.
   *
   * @param seconds rising, at least one
   * @param kelvin as many, above 0
   */
  public static Course through(double[] seconds, double[] kelvin) {
    if (seconds.length == 0 || seconds.length != kelvin.length) {
      throw new IllegalArgumentException("a course needs as many temperatures as times");
    }
    for (int i = 0; i < seconds.length; i++) {
      if (!(kelvin[i] > 0) || i > 0 && !(seconds[i] > seconds[i - 1])) {
        throw new IllegalArgumentException(
            "a course needs rising times and absolute temperatures, not "
                + kelvin[i]
                + " K at "
                + seconds[i]
                + " s");
      }
    }
    return new Course(seconds.clone(), kelvin.clone());
  }

  /** One temperature at all times. */
  public static Course steady(double kelvin) {
    return through(new double[] {0}, new double[] {kelvin});
  }

  /** From one temperature straight to another, and there. */
  public static Course ramp(double fromKelvin, double toKelvin, double kelvinPerSecond) {
    return fromKelvin == toKelvin
        ? steady(toKelvin)
        : through(
            new double[] {0, Math.abs(toKelvin - fromKelvin) / kelvinPerSecond},
            new double[] {fromKelvin, toKelvin});
  }

  /** The temperature at a time. */
  public double kelvin(double at) {
    int last = seconds.length - 1;
    if (at >= seconds[last]) {
      return kelvin[last];
    }
    if (at <= seconds[0]) {
      return kelvin[0];
    }
    int found = Arrays.binarySearch(seconds, at);
    int i = found >= 0 ? found : -found - 2;
    double slope = (kelvin[i + 1] - kelvin[i]) / (seconds[i + 1] - seconds[i]);
    return kelvin[i] + slope * (at - seconds[i]);
  }

  /** When it stops changing, s. */
  public double settledSeconds() {
    return seconds[seconds.length - 1];
  }

  /** The next corner after a time, infinite after the last. */
  public double cornerAfter(double at) {
    int found = Arrays.binarySearch(seconds, at + CLOSE_SECONDS);
    int next = found >= 0 ? found + 1 : -found - 1;
    return next < seconds.length ? seconds[next] : Double.POSITIVE_INFINITY;
  }
}
