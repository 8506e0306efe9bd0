package seamsoak.heatlog;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import seamsoak.numeric.Tridiagonal;

/**
 * A curve told by few points, straight from each to the next. Where the points lie in time is
 * chosen so that no reading is further from a line between readings than asked for (Douglas and
 * Peucker, Cartographica 10 (1973) 112-122, from memory, with the distance taken along the
 * temperature). How high they lie is then fitted, by least squares over time, so that the curve has
 * the mean of what was read: lines between readings lie below every bend. Its ends, and those of
 * gaps, are readings.
 */
final class Pieces {
  /**
   * Longer stretches are parted in the middle first: where a kiln sways, each part of a long one
   * would be looked through for every sway.
   */
  private static final int LONGEST = 8192;

  private Pieces() {}

  private record Stretch(int from, int to) {}

  /** Which readings are kept. */
  static BitSet kept(Readings readings, double toleranceKelvin) {
    int last = readings.seconds().length - 1;
    BitSet kept = new BitSet(last + 1);
    Deque<Stretch> open = new ArrayDeque<>();
    int from = 0;
    for (int i = 1; i <= last; i++) {
      if (readings.isGap(i)) {
        open.push(new Stretch(from, i - 1));
        from = i;
      }
    }
    open.push(new Stretch(from, last));
    while (!open.isEmpty()) {
      Stretch s = open.pop();
      kept.set(s.from());
      kept.set(s.to());
      int furthest =
          s.to() - s.from() > LONGEST
              ? (s.from() + s.to()) / 2
              : furthest(readings, s, toleranceKelvin);
      if (furthest > 0) {
        open.push(new Stretch(s.from(), furthest));
        open.push(new Stretch(furthest, s.to()));
      }
    }
    return kept;
  }

  /** The temperatures of the points kept, in their order. */
  static double[] fitted(Readings readings, BitSet kept) {
    int[] at = kept.stream().toArray();
    double[] fitted = new double[at.length];
    int from = 0;
    for (int k = 1; k <= at.length; k++) {
      if (k == at.length || readings.isGap(at[k - 1] + 1)) {
        fit(readings, at, from, k, fitted);
        from = k;
      }
    }
    return fitted;
  }

  /** Points from one to another, exclusive, between two gaps. */
  private static void fit(Readings readings, int[] at, int from, int end, double[] fitted) {
    int points = end - from;
    if (points == 1) {
      fitted[from] = readings.celsius()[at[from]];
      return;
    }
    double[] t = readings.seconds();
    double[] c = readings.celsius();
    double[] right = new double[points];
    for (int k = 0; k < points - 1; k++) {
      double start = t[at[from + k]];
      double span = t[at[from + k + 1]] - start;
      for (int i = at[from + k]; i < at[from + k + 1]; i++) {
        double step = t[i + 1] - t[i];
        double a = (t[i] - start) / span;
        double b = (t[i + 1] - start) / span;
        double all = step * (c[i] + c[i + 1]) / 2;
        double later = step * (2 * a * c[i] + a * c[i + 1] + b * c[i] + 2 * b * c[i + 1]) / 6;
        right[k] += all - later;
        right[k + 1] += later;
      }
    }
    Tridiagonal system = new Tridiagonal(points);
    system.row(0, 0, 1, 0, c[at[from]]);
    for (int k = 1; k < points - 1; k++) {
      double before = t[at[from + k]] - t[at[from + k - 1]];
      double after = t[at[from + k + 1]] - t[at[from + k]];
      system.row(k, before / 6, (before + after) / 3, after / 6, right[k]);
    }
    system.row(points - 1, 0, 1, 0, c[at[end - 1]]);
    System.arraycopy(system.solved(), 0, fitted, from, points);
  }

  /** 0 where all are near enough to the straight line. */
  private static int furthest(Readings readings, Stretch s, double tolerance) {
    double[] t = readings.seconds();
    double[] c = readings.celsius();
    double slope = s.to() == s.from() ? 0 : (c[s.to()] - c[s.from()]) / (t[s.to()] - t[s.from()]);
    int furthest = 0;
    double most = tolerance;
    for (int i = s.from() + 1; i < s.to(); i++) {
      double away = Math.abs(c[i] - c[s.from()] - slope * (t[i] - t[s.from()]));
      if (away > most) {
        most = away;
        furthest = i;
      }
    }
    return furthest;
  }
}
