package seamsoak.plane;

import java.util.stream.IntStream;

/** One stay in the fire: a straight rise, then a hold; temperatures in kelvin. */
record Stay(double fromKelvin, double toKelvin, double riseSeconds, double holdSeconds) {
  private static final double ZERO = 273.15;
  private static final double DULL = 850 + ZERO;
  private static final double RISE = 300;

  /** Activation temperature of carbon's diffusion in dilute austenite, K. */
  private static final double CLOCK = 17767;

  private static final int PARTS = 4000;

  /** From dull heat, five minutes of rise. */
  static Stay at(double celsius, double minutes) {
    return new Stay(DULL, celsius + ZERO, RISE, 60 * minutes);
  }

  static Stay fahrenheit(double degrees, double minutes) {
    return at((degrees - 32) / 1.8, minutes);
  }

  static Stay hold(double celsius, double minutes) {
    return new Stay(celsius + ZERO, celsius + ZERO, 0, 60 * minutes);
  }

  double seconds() {
    return riseSeconds + holdSeconds;
  }

  double kelvinAt(double t) {
    return t >= riseSeconds
        ? toKelvin
        : fromKelvin + (toKelvin - fromKelvin) * Math.max(0, t) / riseSeconds;
  }

  /**
   * Times to step to, the first 0: even in the square root of diffusion time, in which both scale
   * and a skin grow straight; with the corner between rise and hold.
   */
  double[] times(int steps) {
    double[] clock = new double[PARTS + 1];
    double part = seconds() / PARTS;
    for (int i = 0; i < PARTS; i++) {
      clock[i + 1] = clock[i] + Math.exp(CLOCK * (1 / toKelvin - 1 / kelvinAt((i + 0.5) * part)));
    }
    double[] inner =
        IntStream.range(0, steps)
            .mapToDouble(k -> clock[PARTS] * ((double) k / steps) * ((double) k / steps))
            .map(c -> part * place(clock, c))
            .toArray();
    double shortest = 1e-6 * seconds();
    boolean corner =
        riseSeconds > 0
            && holdSeconds > 0
            && IntStream.range(0, steps)
                .noneMatch(k -> Math.abs(inner[k] - riseSeconds) < shortest);
    IntStream all = IntStream.range(0, steps + (corner ? 1 : 0));
    return IntStream.concat(all, IntStream.of(-1))
        .mapToDouble(k -> k < 0 ? seconds() : k < steps ? inner[k] : riseSeconds)
        .sorted()
        .toArray();
  }

  private static double place(double[] rising, double value) {
    int i = 0;
    while (i < rising.length - 2 && rising[i + 1] < value) {
      i++;
    }
    return i + (value - rising[i]) / (rising[i + 1] - rising[i]);
  }
}
