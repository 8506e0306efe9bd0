package seamsoak.face;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Workpiece;
import seamsoak.state.Joints;

/**
 * Where the seams of restacks and tiles lie on a face.
 *
 * @param piece the metal
 * @param whence where in the stack each point came from
 * @param tiled lines from tile to tile
 * @param plan whether the top is shown; else the end of the bar
 * @param middleAcross from the side of the piece to its middle, m
 * @param middleUp the same from its top
 */
record FaceSeams(
    Workpiece piece,
    Whence whence,
    List<Tiled> tiled,
    boolean plan,
    double middleAcross,
    double middleUp) {
  /** How finely an edge is followed. */
  private static final double STEP_METRES = 0.05e-3;

  /**
   * Seams that run along a line from tip to heel in the middle of the thickness, and how far off.
   *
   * @param across where it lies, from the middle of the width, m
   */
  Map<Joints, Double> along(double across) {
    Map<Joints, Double> all =
        new LinkedHashMap<>(Seams.nearest(piece.width(), middleAcross + across));
    if (!plan) {
      all.putAll(Seams.nearest(piece.thickness(), middleUp));
    }
    return all;
  }

  /**
   * Seams that such a line crosses, each by where it does, m from the middle of the bar.
   *
   * @param from where the line begins
   * @param to where it ends
   * @param up how far above the middle of the thickness it runs
   */
  Map<Joints, List<Double>> across(double from, double to, double across, double up) {
    Map<Joints, List<Double>> all = new LinkedHashMap<>();
    Spot before = new Spot(whence.tilings());
    Spot here = new Spot(whence.tilings());
    whence.find(before, from, across, up);
    for (double x = from + STEP_METRES; x < to; x += STEP_METRES) {
      whence.find(here, x, across, up);
      for (int i = 0; i < tiled.size(); i++) {
        tiled.get(i).crossed(before.down[i], here.down[i], here.way, all, x - STEP_METRES / 2);
      }
      System.arraycopy(here.down, 0, before.down, 0, before.down.length);
    }
    return all;
  }

  /** Seams that run from top to bottom of the shown face, by how far right of its middle, m. */
  Map<Double, Joints> upright() {
    return plan ? Map.of() : moved(piece.width(), -middleAcross, 1);
  }

  /** Seams that run from left to right over the shown face, by how far above its middle, m. */
  Map<Double, Joints> level() {
    return plan ? moved(piece.width(), -middleAcross, 1) : moved(piece.thickness(), -middleUp, -1);
  }

  private static Map<Double, Joints> moved(SectionLine line, double by, int way) {
    Map<Double, Joints> all = new TreeMap<>();
    Seams.of(line).forEach((at, joints) -> all.put(way * (at + by), joints));
    return all;
  }
}
