package seamsoak.heatlog;

import java.util.Arrays;

/**
 * Hampel's filter: a reading that lies further from the median of the seven around it than five
 * times their spread is none. The spread has a floor, for logs in whole degrees have none. What
 * looks like a spike is held against the seven without their common slope, so that it is found in a
 * steep rise too.
 *
 * <p>F. R. Hampel, J. Am. Stat. Assoc. 69 (1974) 383-393: median and scaled median deviation. The
 * slope is the median of all between two of them (P. K. Sen, J. Am. Stat. Assoc. 63 (1968)
 * 1379-1389). Both from memory. Seven readings, five sigma and the floor are judgement.
 */
final class Spikes {
  private static final int WINDOW = 7;
  private static final double SIGMA_OF_DEVIATION = 1.4826;
  private static final double SIGMAS = 5;
  private static final double FLOOR_KELVIN = 2;

  private Spikes() {}

  /** Which readings are spikes. */
  static boolean[] in(double[] celsius) {
    boolean[] spikes = new boolean[celsius.length];
    double[] window = new double[WINDOW];
    double[] slopes = new double[WINDOW * (WINDOW - 1) / 2];
    int count = Math.min(WINDOW, celsius.length);
    for (int i = 0; i < celsius.length; i++) {
      // at either end the first or last seven, so that two spikes there are not half of them
      int from = Math.max(0, Math.min(i - WINDOW / 2, celsius.length - count));
      System.arraycopy(celsius, from, window, 0, count);
      if (Math.abs(celsius[i] - median(window, count)) > FLOOR_KELVIN) {
        System.arraycopy(celsius, from, window, 0, count);
        spikes[i] = isSpike(window, count, i - from, slopes);
      }
    }
    return spikes;
  }

  private static boolean isSpike(double[] window, int count, int at, double[] slopes) {
    int pairs = 0;
    for (int a = 0; a < count; a++) {
      for (int b = a + 1; b < count; b++) {
        slopes[pairs++] = (window[b] - window[a]) / (b - a);
      }
    }
    double slope = median(slopes, pairs);
    for (int j = 0; j < count; j++) {
      window[j] -= slope * j;
    }
    double own = window[at];
    double[] level = window.clone();
    double middle = median(level, count);
    for (int j = 0; j < count; j++) {
      level[j] = Math.abs(window[j] - middle);
    }
    double sigma = SIGMA_OF_DEVIATION * median(level, count);
    return Math.abs(own - middle) > Math.max(FLOOR_KELVIN, SIGMAS * sigma);
  }

  /** Sorts them. */
  private static double median(double[] of, int count) {
    Arrays.sort(of, 0, count);
    return count % 2 == 1 ? of[count / 2] : (of[count / 2 - 1] + of[count / 2]) / 2;
  }
}
