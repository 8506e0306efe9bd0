package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves labels along a line just far enough that none covers another: the least sum of squared
 * shifts in the given order, found by merging neighbors that touch (pool adjacent violators), then
 * held within the ends.
 */
final class Spread {
  private Spread() {}

  /**
   * Middles of the labels after spreading.
   *
   * @param wanted middles, in rising order
   * @param sizes extents along the line
   */
  static double[] middles(double[] wanted, double[] sizes, double low, double high) {
    int n = wanted.length;
    double[] offset = new double[n];
    for (int i = 1; i < n; i++) {
      offset[i] = offset[i - 1] + (sizes[i - 1] + sizes[i]) / 2;
    }
    List<double[]> pools = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      pools.add(new double[] {wanted[i] - offset[i], 1});
      while (pools.size() > 1 && mean(pools, 1) < mean(pools, 2)) {
        double[] last = pools.remove(pools.size() - 1);
        double[] before = pools.get(pools.size() - 1);
        before[0] += last[0];
        before[1] += last[1];
      }
    }
    double[] middles = new double[n];
    int i = 0;
    for (double[] pool : pools) {
      for (int k = 0; k < pool[1]; k++, i++) {
        middles[i] = pool[0] / pool[1] + offset[i];
      }
    }
    hold(middles, sizes, low, high);
    return middles;
  }

  private static double mean(List<double[]> pools, int fromEnd) {
    double[] pool = pools.get(pools.size() - fromEnd);
    return pool[0] / pool[1];
  }

  private static void hold(double[] middles, double[] sizes, double low, double high) {
    double limit = high;
    for (int i = middles.length - 1; i >= 0; i--) {
      middles[i] = Math.min(middles[i], limit - sizes[i] / 2);
      limit = middles[i] - sizes[i] / 2;
    }
    limit = low;
    for (int i = 0; i < middles.length; i++) {
      middles[i] = Math.max(middles[i], limit + sizes[i] / 2);
      limit = middles[i] + sizes[i] / 2;
    }
  }
}
