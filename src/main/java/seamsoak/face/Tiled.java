package seamsoak.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import seamsoak.state.Joints;

/**
 * Lines from one tile to the next.
 *
 * @param ways one for each way that pieces lie since
 * @param mask which turnings count
 */
record Tiled(List<Way> ways, int mask) {
  Way of(int way) {
    return ways.get(way & mask);
  }

  /** The seams between two neighboring places. */
  void crossed(double from, double to, int way, Map<Joints, List<Double>> all, double x) {
    double jump = to - from;
    double end = Math.abs(jump) > 0.5 ? to + (jump > 0 ? -1 : 1) : to;
    of(way)
        .seams()
        .forEach(
            (joints, places) ->
                places.stream()
                    .filter(p -> lies(p, from, end) || lies(p + 1, from, end))
                    .forEach(p -> all.computeIfAbsent(joints, j -> new ArrayList<>()).add(x)));
  }

  private static boolean lies(double place, double from, double to) {
    return Math.min(from, to) <= place && place < Math.max(from, to);
  }

  /** One of them: where on it a tile begins, how long that is, m, and where its seams lie in it. */
  record Way(Profile profile, double begins, double period, Map<Joints, List<Double>> seams) {
    /** The place on it of metal so far down a tile. */
    double at(double down) {
      double at = begins + down * period;
      return begins > 0 && at > profile.metres() ? at - profile.metres() : at;
    }
  }
}
