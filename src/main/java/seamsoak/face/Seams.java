package seamsoak.face;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import seamsoak.billet.SectionLine;
import seamsoak.carbon.Plane;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;
import seamsoak.state.Joints;
import seamsoak.state.SeamPlace;

/** Where the seams of restacks and tiles lie on a line through a billet. */
final class Seams {
  /** Shares of a tile closer than that are one place. */
  private static final double SAME = 1e-6;

  private Seams() {}

  /** By place on a line from end to end, m; those between layers are left out. */
  static Map<Double, Joints> of(SectionLine line) {
    Strip strip = line.strip();
    Map<Double, Joints> all = new TreeMap<>();
    for (Plane p : strip.planes()) {
      if (p.name().kind() != SeamName.Kind.LAYERS) {
        double at = strip.metres(0, p.face());
        Joints joints = SeamPlace.joints(line, p);
        all.put(at, joints);
        // a line parted inside a tile goes on at its other end
        if (line.isHalf() && Profile.begins(line) == 0) {
          all.put(2 * strip.metres() - at, joints);
        }
      }
    }
    return all;
  }

  /** The nearest of each kind to a place, by its distance, m. */
  static Map<Joints, Double> nearest(SectionLine line, double metres) {
    Map<Joints, Double> all = new LinkedHashMap<>();
    of(line).forEach((at, joints) -> all.merge(joints, Math.abs(at - metres), Math::min));
    return all;
  }

  /** Where each lies in a tile, of 1 from its upper face down; the tile seam at 0. */
  static Map<Joints, List<Double>> inTile(SectionLine line) {
    double begins = Profile.begins(line);
    double period = Profile.period(line);
    Map<Joints, List<Double>> all = new LinkedHashMap<>();
    of(line)
        .forEach(
            (at, joints) -> {
              double down = (at - begins) / period;
              down -= Math.floor(down + SAME);
              List<Double> places = all.computeIfAbsent(joints, j -> new ArrayList<>());
              double place = down;
              if (places.stream().noneMatch(d -> Math.abs(d - place) < SAME)) {
                places.add(place);
              }
            });
    return all;
  }
}
