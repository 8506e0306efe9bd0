package seamsoak.face;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Plane;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripLines;

/** Carbon along one line of a billet, ready to be asked at any place, as a probe would see it. */
final class Profile {
  private final Strip strip;

  /** Where each cell begins, m, and behind them the end. */
  private final double[] edge;

  /** Carbon over that of the core, at equal activity. */
  private final Course share;

  private final Course percent;
  private final double metres;

  /** Counts the stretches of one metal. */
  private final int[] stretch;

  /** Which of the stack's steels each cell is, -1 for none. */
  private final int[] steel;

  /** Whether the piece that each cell lies in has its layers across the line, told one by one. */
  private final boolean[] layered;

  private final int pieces;

  private final boolean mirrored;

  private Profile(SectionLine line, double[] share, List<Metal> steels) {
    strip = line.strip();
    mirrored = line.isHalf();
    int n = strip.cells();
    edge = new double[n + 1];
    double[] cells = new double[n];
    stretch = new int[n];
    steel = new int[n];
    for (int i = 0; i < n; i++) {
      edge[i + 1] = edge[i] + strip.metres(i);
      cells[i] = strip.percent(i);
      boolean same = i == 0 || strip.metal(i).equals(strip.metal(i - 1));
      stretch[i] = i == 0 ? 0 : stretch[i - 1] + (same ? 0 : 1);
      steel[i] = i > 0 && same ? steel[i - 1] : steels.indexOf(strip.metal(i));
    }
    metres = edge[n];
    this.share = new Course(share);
    percent = new Course(StripLines.spots(strip, cells));
    layered = layered(strip, steel);
    pieces =
        (int) strip.planes().stream().filter(p -> p.name().kind() != SeamName.Kind.LAYERS).count();
  }

  private static boolean[] layered(Strip strip, int[] steel) {
    boolean[] all = new boolean[steel.length];
    Set<Integer> ends =
        strip.planes().stream()
            .filter(p -> p.name().kind() != SeamName.Kind.LAYERS)
            .map(Plane::face)
            .collect(Collectors.toSet());
    int from = 0;
    for (int i = 1; i <= steel.length; i++) {
      if (i == steel.length || ends.contains(i)) {
        Arrays.fill(all, from, i, Arrays.stream(steel, from, i).anyMatch(s -> s >= 0));
        from = i;
      }
    }
    return all;
  }

  /**
   * Of a line through a piece.
   *
   * @param steels of the stack
   */
  static Profile of(SectionLine line, Workpiece piece, List<Metal> steels) {
    double[] shares = shares(line.strip(), piece.body(), piece.coreRatio());
    return new Profile(line, StripLines.spots(line.strip(), shares), steels);
  }

  /** Of a line between layers, which tells the carbon of each by itself. */
  static Profile ofLayers(SectionLine line) {
    return new Profile(line, new double[0], List.of());
  }

  private static double[] shares(Strip strip, Metal body, double coreRatio) {
    CarbonLaw.Isotherm own = body.law().at(CarbonLaw.COMPARED_AT_KELVIN);
    double[] all = new double[strip.cells()];
    for (int i = 0; i < all.length; i++) {
      Metal metal = strip.metal(i);
      double ratio =
          metal.equals(body)
              ? strip.ratio(i)
              : own.ratioBeside(metal.law().at(CarbonLaw.COMPARED_AT_KELVIN), strip.ratio(i));
      all[i] = ratio / coreRatio;
    }
    return all;
  }

  /** Where on a line from tile to tile the first of them begins, m. */
  static double begins(SectionLine line) {
    List<Plane> seams = tileSeams(line);
    return seams.isEmpty() ? 0 : line.strip().metres(0, seams.get(0).face());
  }

  /**
   * Thickness of a tile, m. Where its faces are alike the line is half of one; else it is one or
   * two, parted inside.
   */
  static double period(SectionLine line) {
    List<Plane> seams = tileSeams(line);
    Strip strip = line.strip();
    if (seams.isEmpty() || seams.get(0).face() == 0) {
      return 2 * strip.metres();
    }
    return seams.size() > 1
        ? strip.metres(seams.get(0).face(), seams.get(1).face())
        : strip.metres();
  }

  private static List<Plane> tileSeams(SectionLine line) {
    return line.strip().planes().stream()
        .filter(p -> p.name().kind() == SeamName.Kind.TILES)
        .toList();
  }

  double metres() {
    return metres;
  }

  /** Where on it the first seam lies, m. */
  double seamMetres() {
    return edge[strip.seam()];
  }

  /** The cell at a place on the line or its mirror image, m from the near end. */
  int cell(double metres) {
    return cell(metres, 0);
  }

  /** The same, looked for first where it was last found. */
  int cell(double metres, int last) {
    double x = inside(metres);
    if (last + 1 < edge.length && edge[last] <= x && x < edge[last + 1]) {
      return last;
    }
    int low = 0;
    int high = edge.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (edge[middle] <= x) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double inside(double x) {
    return mirrored && x > metres ? 2 * metres - x : x;
  }

  /** Which of the stack's steels is there; -1 where it is none. */
  int steel(int cell) {
    return steel[cell];
  }

  /** Whether the piece there has its layers across the line, told one by one. */
  boolean isLayered(int cell) {
    return layered[cell];
  }

  /** Whether as many pieces lie on another. */
  boolean hasAsManyAs(Profile other) {
    return mirrored == other.mirrored && pieces == other.pieces;
  }

  /** Over the core's carbon, at equal activity. */
  double share(int cell, double metres) {
    return share.at(cell, inside(metres));
  }

  /** Of the metal there, wt%. */
  double percent(int cell, double metres) {
    return percent.at(cell, inside(metres));
  }

  private double middle(int cell) {
    return 0.5 * (edge[cell] + edge[cell + 1]);
  }

  /** Something along the line: straight from the middle of a cell to that of the next one alike. */
  private final class Course {
    /** In the middle of each cell. */
    private final double[] values;

    /** By cell, how it goes towards the one before and the one after. */
    private final double[] before;

    private final double[] after;

    Course(double[] of) {
      values = of;
      before = new double[of.length];
      after = new double[of.length];
      for (int i = 1; i < of.length; i++) {
        if (stretch[i] == stretch[i - 1]) {
          before[i] = (of[i] - of[i - 1]) / (middle(i) - middle(i - 1));
          after[i - 1] = before[i];
        }
      }
    }

    double at(int cell, double x) {
      double from = x - middle(cell);
      return values[cell] + from * (from < 0 ? before[cell] : after[cell]);
    }
  }
}
