package seamsoak.heatlog;

import java.util.function.DoubleUnaryOperator;

/**
 * A true temperature through time, as it was before any logger wrote it down.
 *
 * @param minutes how long it lasts
 * @param celsius temperature at a minute from the start
 */
record TrueHeat(double minutes, DoubleUnaryOperator celsius) {

  /** A cold bar put into a hot forge, held at 1121 C with the burner's ripple, cooled in air. */
  static final TrueHeat FORGE =
      new TrueHeat(
          60,
          m -> {
            double in = 1121 - (1121 - 25) * Math.exp(-Math.max(0, m - 1) / 3);
            double ripple = m > 18 ? 3 * Math.sin(2 * Math.PI * (m - 18) / 2) : 0;
            return m < 40 ? in + ripple : 60 + (1121 - 60) * Math.exp(-(m - 40) / 9);
          });

  /** A kiln's day: two ramps, two holds, and the night to cool. */
  static final TrueHeat KILN =
      new TrueHeat(
          480,
          m ->
              m < 169
                  ? 25 + 5 * m
                  : m < 199
                      ? 870
                      : m < 247
                          ? 870 + 4 * (m - 199)
                          : m < 307 ? 1062 : 40 + (1062 - 40) * Math.exp(-(m - 307) / 90));

  /** A warm bar back into the fire for a quarter of an hour, and out onto the anvil. */
  static final TrueHeat SHORT =
      new TrueHeat(
          16,
          m ->
              m < 0.5
                  ? 760
                  : m < 13
                      ? 1177 - (1177 - 760) * Math.exp(-(m - 0.5) / 1.2)
                      : 1177 - 55 * (m - 13));

  double celsius(double minute) {
    return celsius.applyAsDouble(minute);
  }

  /** What a second thermocouple away from the work reads. */
  TrueHeat elsewhere(double share, double celsius) {
    return new TrueHeat(minutes, m -> celsius + share * celsius(m));
  }

  /**
   * Minutes at one temperature that come to the same as this course between two moments.
   *
   * @param rate of what is summed, by temperature in C; nothing below the start of austenite
   */
  double worth(DoubleUnaryOperator rate, double atCelsius, double fromMinute, double toMinute) {
    double step = 1.0 / 600;
    double sum = 0;
    for (double m = fromMinute + step / 2; m < toMinute; m += step) {
      sum += step * rate.applyAsDouble(celsius(m));
    }
    return sum / rate.applyAsDouble(atCelsius);
  }
}
