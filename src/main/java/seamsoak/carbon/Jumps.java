package seamsoak.carbon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import seamsoak.heat.HeatCurve;

/** Parts a curve where the law of a metal jumps, so that no step of the solver lies across. */
final class Jumps {
  /** Half the gap left around a jump, K. */
  private static final double GAP = 1e-6;

  private Jumps() {}

  static List<HeatCurve.Segment> parted(HeatCurve curve, List<Metal> metals) {
    double[] jumps = new double[metals.size()];
    double highest = 0;
    for (int m = 0; m < jumps.length; m++) {
      jumps[m] = metals.get(m).law().jumpKelvin();
      highest = jumps[m] > highest ? jumps[m] : highest;
    }
    if (curve.staysAbove(highest)) {
      return curve.segments();
    }
    Arrays.sort(jumps);
    List<HeatCurve.Segment> parts = new ArrayList<>();
    for (HeatCurve.Segment s : curve.segments()) {
      part(s, jumps, parts);
    }
    return parts;
  }

  private static void part(
      HeatCurve.Segment segment, double[] jumps, List<HeatCurve.Segment> parts) {
    double from = segment.fromKelvin();
    double to = segment.toKelvin();
    double way = Math.signum(to - from);
    double perKelvin = way == 0 ? 0 : segment.seconds() / (to - from);
    for (int i = 0; i < jumps.length; i++) {
      double jump = jumps[way < 0 ? jumps.length - 1 - i : i];
      double before = jump - way * GAP;
      // strictly inside, and past any jump at nearly the same temperature
      if (way * (before - from) > GAP && way * (to - jump) > 2 * GAP) {
        parts.add(new HeatCurve.Segment(from, before, (before - from) * perKelvin));
        from = jump + way * GAP;
      }
    }
    parts.add(
        new HeatCurve.Segment(from, to, way == 0 ? segment.seconds() : (to - from) * perKelvin));
  }
}
