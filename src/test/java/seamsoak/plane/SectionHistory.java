package seamsoak.plane;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import seamsoak.data.DataFolder;
import seamsoak.steel.SteelTable;

/**
 * The demo billet's section through its steps as a second solver has it, in two dimensions: the
 * place to ask for numbers that another calculation is to be compared with.
 */
public final class SectionHistory {
  private static final SteelTable TABLE = SteelTable.load(DataFolder.packed());

  static final PlaneMetal BODY = steel("1084");
  static final PlaneMetal BRIGHT = steel("75Ni8");
  static final PlaneMetal SHEET = steel("1008");
  private static final PlaneMetal RICH = steel("1095");
  private static final PlaneMetal POOR = steel("1018");

  private static final Map<Run, Map<Integer, Plate>> DONE = new ConcurrentHashMap<>();

  private SectionHistory() {}

  /** What the bar is made of. */
  public enum Bar {
    /** One solid bar of 1084, as large as the stack. */
    MONO,
    /** Thirteen layers, 1084 and 75Ni8 in turn. */
    LAYERED,
    /** The same of 1095 and 1018, of which one has five times the carbon of the other. */
    UNLIKE,
    /** The same layers, all of 1084; the first two steps only. */
    THIRTEEN
  }

  /** How fine; each takes about four times as long as the one before. */
  public enum Fineness {
    USUAL(Mesh.USUAL),
    FINE(Mesh.FINE),
    FINEST(Mesh.FINEST);

    final Mesh mesh;

    Fineness(Mesh mesh) {
      this.mesh = mesh;
    }
  }

  /**
   * A number of a history.
   *
   * @param bar which bar
   * @param step after which step of the demo
   * @param what which seam, crossing or place
   * @param place where on it; fractions are of the section's width or of its height
   * @param quantity what the number is
   * @param value wt% of 1084 at equal activity, or mm
   */
  public record Told(Bar bar, int step, String what, String place, String quantity, double value) {}

  /** All numbers of a history up to a step, 1 to 15. */
  public static List<Told> told(Bar bar, Fineness fineness, int lastStep) {
    return plates(bar, fineness, lastStep).entrySet().stream()
        .filter(e -> e.getKey() <= lastStep)
        .flatMap(e -> new Places(bar, e.getKey(), e.getValue()).told().stream())
        .toList();
  }

  /** The one number with that name. */
  public static double value(List<Told> told, int step, String what, String place) {
    return told.stream()
        .filter(t -> t.step() == step && t.what().equals(what) && t.place().equals(place))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(step + " " + what + ", " + place))
        .value();
  }

  private record Run(Bar bar, Fineness fineness, int last) {}

  /** The section after each step; computed once. */
  static Map<Integer, Plate> plates(Bar bar, Fineness fineness, int last) {
    int end = last <= 2 ? 2 : last <= 5 ? 5 : last <= 10 ? 10 : 15;
    Run whole = new Run(bar, fineness, 15);
    Run run = DONE.containsKey(whole) ? whole : new Run(bar, fineness, end);
    return DONE.computeIfAbsent(run, r -> compute(bar, fineness.mesh, r.last()));
  }

  private static Map<Integer, Plate> compute(Bar bar, Mesh mesh, int last) {
    Furnace furnace = new Furnace(PlaneFire.FORGE, mesh);
    return switch (bar) {
      case MONO -> Mosaic.solid(BODY, SHEET, furnace, last);
      case LAYERED -> Mosaic.layered(BODY, BRIGHT, SHEET, furnace, last);
      case UNLIKE -> Mosaic.layered(RICH, POOR, SHEET, furnace, last);
      case THIRTEEN -> Mosaic.layered(BODY, BODY, SHEET, furnace, 2);
    };
  }

  private static PlaneMetal steel(String id) {
    return new AusteniteMetal(TABLE.find(id).orElseThrow().analysis());
  }
}
