package seamsoak.state;

import java.util.ArrayList;
import java.util.List;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripLines;

/**
 * Carbon as a probe would see it: means over spots of one metal each. A cell a micrometre thick at
 * a boundary can hold a trace of carbide, of no weight, that would tower over everything else.
 */
public final class Spots {
  /** What a probe resolves, m. */
  public static final double PROBE_METRES = StripLines.PROBE_METRES;

  private Spots() {}

  /** A spot: its middle, outward from the seam, and the carbon per metal atom in it. */
  public record Spot(double metres, Metal metal, double ratio) {
    public double percent() {
      return metal.percent(ratio);
    }
  }

  /**
   * Spots of one side of a seam, outward.
   *
   * @param from cell next to the seam
   * @param way 1 towards higher cells, -1 towards lower ones
   * @param leastMetres least width of a spot
   */
  public static List<Spot> side(Strip s, int from, int way, double leastMetres) {
    List<Spot> spots = new ArrayList<>();
    double x = 0;
    double width = 0;
    double carbon = 0;
    for (int i = from; i >= 0 && i < s.cells(); i += way) {
      width += s.metres(i);
      carbon += s.metres(i) * s.ratio(i);
      int next = i + way;
      boolean ends = next < 0 || next >= s.cells() || !s.metal(next).equals(s.metal(i));
      if (ends || width >= leastMetres) {
        spots.add(new Spot(x + 0.5 * width, s.metal(i), carbon / width));
        x += width;
        width = 0;
        carbon = 0;
      }
    }
    return spots;
  }
}
