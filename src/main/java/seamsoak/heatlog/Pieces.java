package seamsoak.heatlog;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/**
 * A curve told by few points: straight from each to the next, and nowhere further from what was
 * read than asked for (Douglas and Peucker, Cartographica 10 (1973) 112-122, with the distance
 * taken along the temperature). The ends of gaps stay.
 */
final class Pieces {
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
      int furthest = furthest(readings, s, toleranceKelvin);
      if (furthest > 0) {
        open.push(new Stretch(s.from(), furthest));
        open.push(new Stretch(furthest, s.to()));
      }
    }
    return kept;
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
