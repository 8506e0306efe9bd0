package seamsoak.soak;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Percentiles and what sways a result, over samples of which some may be infinite. */
final class Spread {
  private Spread() {}

  /** A percentile (0 to 1) of weighed values: straight between the middles of their weights. */
  static double percentile(double[] values, double[] weights, double share) {
    int[] order =
        IntStream.range(0, values.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double goal = share * Arrays.stream(weights).sum();
    double so = 0;
    double before = 0;
    for (int n = 0; n < order.length; n++) {
      int i = order[n];
      double middle = so + 0.5 * weights[i];
      if (middle >= goal) {
        double apart = middle - before;
        return n == 0 || apart <= 0
            ? values[i]
            : values[i] + (goal - middle) / apart * (values[i] - values[order[n - 1]]);
      }
      before = middle;
      so += weights[i];
    }
    return values[order[order.length - 1]];
  }

  /** Index of the input whose ranks go most with the result's, -1 when nothing varies. */
  static int dominant(double[][] inputs, double[] result) {
    double[] ranks = ranks(result);
    int best = -1;
    double most = 0;
    for (int d = 0; d < inputs[0].length; d++) {
      int input = d;
      double c =
          Math.abs(
              correlation(
                  ranks(Arrays.stream(inputs).mapToDouble(x -> x[input]).toArray()), ranks));
      if (c > most) {
        most = c;
        best = d;
      }
    }
    return best;
  }

  /** Ranks, equal values sharing the mean of theirs. */
  private static double[] ranks(double[] values) {
    int n = values.length;
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] ranks = new double[n];
    for (int i = 0; i < n; ) {
      int j = i;
      while (j < n && values[order[j]] == values[order[i]]) {
        j++;
      }
      for (int k = i; k < j; k++) {
        ranks[order[k]] = 0.5 * (i + j - 1);
      }
      i = j;
    }
    return ranks;
  }

  private static double correlation(double[] a, double[] b) {
    double ma = Arrays.stream(a).average().orElse(0);
    double mb = Arrays.stream(b).average().orElse(0);
    double ab = 0;
    double aa = 0;
    double bb = 0;
    for (int i = 0; i < a.length; i++) {
      ab += (a[i] - ma) * (b[i] - mb);
      aa += (a[i] - ma) * (a[i] - ma);
      bb += (b[i] - mb) * (b[i] - mb);
    }
    return aa == 0 || bb == 0 ? 0 : ab / Math.sqrt(aa * bb);
  }
}
