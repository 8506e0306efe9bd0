package seamsoak.heatlog;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Hampel's filter: a reading that lies further from the median of the seven around it than five
 * times their spread is none. The spread has a floor, for logs in whole degrees have none. What
 * looks like a spike is held against the seven without their common slope, so that it is found in a
 * steep rise too, and what lies far off against their level also.
 *
 * <p>F. R. Hampel, J. Am. Stat. Assoc. 69 (1974) 383-393: median and scaled median deviation. The
 * slope is the median of all between two of them (P. K. Sen, J. Am. Stat. Assoc. 63 (1968)
 * 1379-1389). Both from memory. Seven readings, five sigma, the floor and what is far are
 * judgement.
 */
final class Spikes {
  private static final int WINDOW = 7;
  private static final double SIGMA_OF_DEVIATION = 1.4826;
  private static final double SIGMAS = 5;
  private static final double FLOOR_KELVIN = 2;

  /**
   * Where three spikes of the seven have turned the slope, what lies so far from the level is one.
   */
  private static final double GROSS_KELVIN = 20;

  private Spikes() {}

  /** Which readings are spikes, where they follow each other evenly. */
  static boolean[] in(double[] celsius) {
    return in(IntStream.range(0, celsius.length).asDoubleStream().toArray(), celsius);
  }

  /**
   * Which readings are spikes. Their times count: where some between them could not be read, the
   * next true one lies two steps away.
   *
   * @param seconds rising
   */
  static boolean[] in(double[] seconds, double[] celsius) {
    boolean[] spikes = new boolean[celsius.length];
    double[] sorted = new double[WINDOW];
    int count = Math.min(WINDOW, celsius.length);
    for (int i = 0; i < celsius.length; i++) {
      // at either end the first or last seven, so that two spikes there are not half of them
      int from = Math.max(0, Math.min(i - WINDOW / 2, celsius.length - count));
      System.arraycopy(celsius, from, sorted, 0, count);
      if (Math.abs(celsius[i] - median(sorted, count)) > FLOOR_KELVIN) {
        spikes[i] =
            isSpike(
                Arrays.copyOfRange(seconds, from, from + count),
                Arrays.copyOfRange(celsius, from, from + count),
                i - from);
      }
    }
    return spikes;
  }

  private static boolean isSpike(double[] seconds, double[] celsius, int at) {
    return isBeyond(apart(seconds, celsius, slope(seconds, celsius)), at, FLOOR_KELVIN)
        || isBeyond(apart(seconds, celsius, 0), at, GROSS_KELVIN);
  }

  private static boolean isBeyond(double[] apart, int at, double floor) {
    double sigma = SIGMA_OF_DEVIATION * median(apart.clone(), apart.length);
    return apart[at] > Math.max(floor, SIGMAS * sigma);
  }

  /** How far each lies from the middle one, the slope taken off. */
  private static double[] apart(double[] seconds, double[] celsius, double slope) {
    double[] level = new double[celsius.length];
    for (int j = 0; j < level.length; j++) {
      level[j] = celsius[j] - slope * (seconds[j] - seconds[0]);
    }
    double middle = median(level.clone(), level.length);
    return Arrays.stream(level).map(l -> Math.abs(l - middle)).toArray();
  }

  private static double slope(double[] seconds, double[] celsius) {
    double[] slopes = new double[seconds.length * (seconds.length - 1) / 2];
    int pairs = 0;
    for (int a = 0; a < seconds.length; a++) {
      for (int b = a + 1; b < seconds.length; b++) {
        if (seconds[b] > seconds[a]) {
          slopes[pairs++] = (celsius[b] - celsius[a]) / (seconds[b] - seconds[a]);
        }
      }
    }
    return pairs == 0 ? 0 : median(slopes, pairs);
  }

  /** Sorts them. */
  private static double median(double[] of, int count) {
    Arrays.sort(of, 0, count);
    return count % 2 == 1 ? of[count / 2] : (of[count / 2 - 1] + of[count / 2]) / 2;
  }
}
