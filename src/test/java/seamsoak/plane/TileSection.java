package seamsoak.plane;

import java.util.ArrayList;
import java.util.List;
import seamsoak.plane.SectionHistory.Bar;
import seamsoak.plane.SectionHistory.Fineness;

/**
 * A tile of the demo in section as the second solver has it, for another calculation to be compared
 * with: across its width, and up from its lower face to its upper one.
 */
public final class TileSection {
  private static final int SOAK_STEPS = 20;

  private final Plate plate;
  private final Reading reading;

  private TileSection(Plate plate) {
    this.plate = plate;
    this.reading = new Reading(plate, SectionHistory.BODY);
  }

  /** After a step of the demo, from the weld of the tiles on. */
  public static TileSection after(Bar bar, Fineness fineness, int step) {
    return new TileSection(SectionHistory.plates(bar, fineness, 15).get(step));
  }

  /** After its last step and a soak in which nothing leaves it. */
  public static TileSection soaked(Bar bar, Fineness fineness, double celsius, double minutes) {
    Furnace furnace = new Furnace(PlaneFire.FORGE, fineness.mesh.withSteps(SOAK_STEPS));
    Plate rolled = SectionHistory.plates(bar, fineness, 15).get(15);
    return new TileSection(furnace.heat(rolled, Stay.hold(celsius, minutes), Sides.NONE).plate());
  }

  /** Width, m. */
  public double width() {
    return plate.across().metres();
  }

  /** How thick the sheet on each of its sides is, m; 0 where there is none any more. */
  public double sheet() {
    Axis axis = plate.across();
    double[] at = axis.linePositions();
    for (int i = 0; i < at.length; i++) {
      if (axis.line()[i].name().equals("sheet")) {
        return at[i];
      }
    }
    return 0;
  }

  /** From one tile seam to the next, m. */
  public double height() {
    return plate.up().metres();
  }

  /** Where seams lie across the width, m. */
  public List<Double> seamsAcross() {
    return seams(plate.across());
  }

  /** Where seams lie up the tile, m; at 0 that of the tiles. */
  public List<Double> seamsUp() {
    return seams(plate.up());
  }

  private static List<Double> seams(Axis axis) {
    List<Double> all = new ArrayList<>();
    double[] at = axis.linePositions();
    for (int i = axis.ring() ? 0 : 1; i < at.length - 1; i++) {
      if (axis.line()[i].name().matches("(restack|tile) \\d+")) {
        all.add(at[i]);
      }
    }
    return all;
  }

  /** Carbon, wt% of 1084 at equal activity. */
  public double percent(double across, double up) {
    return reading.atPlace(across, up);
  }
}
