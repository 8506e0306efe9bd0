package seamsoak.heatlog;

import java.util.Arrays;

/**
 * Hampel's filter: a reading that lies further from the median of the seven around it than five
 * times their spread is none. The spread has a floor, for logs in whole degrees have none.
 *
 * <p>F. R. Hampel, J. Am. Stat. Assoc. 69 (1974) 383-393: median and scaled median deviation. Seven
 * readings, five sigma and the floor are judgement.
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
    int count = Math.min(WINDOW, celsius.length);
    for (int i = 0; i < celsius.length; i++) {
      // at either end the first or last seven, so that two spikes there are not half of them
      int from = Math.max(0, Math.min(i - WINDOW / 2, celsius.length - count));
      double middle = median(celsius, from, count, window);
      double away = Math.abs(celsius[i] - middle);
      if (away > FLOOR_KELVIN) {
        for (int j = 0; j < count; j++) {
          window[j] = Math.abs(celsius[from + j] - middle);
        }
        double sigma = SIGMA_OF_DEVIATION * median(window, 0, count, window);
        spikes[i] = away > Math.max(FLOOR_KELVIN, SIGMAS * sigma);
      }
    }
    return spikes;
  }

  private static double median(double[] of, int from, int count, double[] into) {
    System.arraycopy(of, from, into, 0, count);
    Arrays.sort(into, 0, count);
    return count % 2 == 1 ? into[count / 2] : (into[count / 2 - 1] + into[count / 2]) / 2;
  }
}
