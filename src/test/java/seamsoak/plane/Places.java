package seamsoak.plane;

import java.util.ArrayList;
import java.util.List;
import seamsoak.plane.SectionHistory.Bar;
import seamsoak.plane.SectionHistory.Told;

/**
 * Where a section is read. Seams away from crossings are read where both crossings are farthest: in
 * the middle of a piece after the first restack, later at three eighths, half-way between the seams
 * of the two restacks.
 */
final class Places {
  static final String POINT = "carbon in the face";
  static final String MEAN = "mean carbon in the face over a sixteenth of the section";
  static final String CORE = "carbon";
  static final String CROSSING = "carbon on the crossing";

  static final String WIDTH = "true width at half of the dip";

  private static final double STRETCH = 1.0 / 32;

  private final Bar bar;
  private final int step;
  private final Plate plate;
  private final Reading reading;
  private final Reading other;
  private final List<Told> told = new ArrayList<>();

  Places(Bar bar, int step, Plate plate) {
    this.bar = bar;
    this.step = step;
    this.plate = plate;
    reading = new Reading(plate, SectionHistory.BODY);
    other = new Reading(plate.exchanged(), SectionHistory.BODY);
  }

  List<Told> told() {
    if (step <= 2) {
      if (bar != Bar.MONO) {
        layers();
      }
      return told;
    }
    boolean once = step <= 6;
    double share = once ? 0.25 : 0.375;
    String place = once ? "1/4 of the width" : "3/8 of the width";
    double width = plate.across().metres();
    double height = plate.up().metres();
    if (bar == Bar.MONO || !once) {
      add("core", place + " and height", CORE, reading.atPlace(share * width, share * height));
    }
    if (step >= 12) {
      seam("tile 11", place, share, reading);
      profile(share * width, place);
      crossing("tile 11", "restack 4");
      crossing("tile 11", "restack 8");
    }
    if (!once) {
      seam("restack 8", place, share, reading);
      seam("restack 8", "3/8 of the height", share, other);
      crossing("restack 8", "restack 4");
      crossing("restack 8", "restack 8");
    }
    seam("restack 4", place, share, reading);
    seam("restack 4", once ? "1/4 of the height" : "3/8 of the height", share, other);
    crossing("restack 4", "restack 4");
    return told;
  }

  private void add(String what, String place, String quantity, double value) {
    told.add(new Told(bar, step, what, place, quantity, value));
  }

  private void seam(String name, String place, double share, Reading r) {
    double width = r.plate().across().metres();
    int line = Reading.line(r.plate().up(), name);
    add(name, place, POINT, r.onLine(line, share * width));
    double from = (share - STRETCH) * width;
    add(name, place + " (mean)", MEAN, r.meanOnLine(line, from, from + 2 * STRETCH * width));
  }

  private void crossing(String lying, String standing) {
    double value =
        reading.crossing(Reading.line(plate.across(), standing), Reading.line(plate.up(), lying));
    add(lying + " and " + standing, "crossing", CROSSING, value);
  }

  private void profile(double acrossMetres, String place) {
    int line = Reading.line(plate.up(), "tile 11");
    List<Reading.Point> p = reading.profile(line, acrossMetres, plate.up().metres() / 4);
    add("tile 11", place + " 1 mm off", POINT, Reading.percentAt(p, 1e-3));
    add("tile 11", place + " 2 mm off", POINT, Reading.percentAt(p, 2e-3));
    add("tile 11", place + " far", CORE, Reading.far(p));
    double whole = 2 * Reading.halfOfDip(p);
    add("tile 11", place + " wide", WIDTH, 1e3 * whole);
  }

  /** In the middle of the width: means of layers, faces, middles. */
  private void layers() {
    Axis up = plate.up();
    double[] at = up.linePositions();
    add("core", "mean over two layers", CORE, meanOfTwoLayers(plate, 0));
    add("layer", "innermost face", POINT, reading.onLine(1, 0));
    add("thick layer", "its middle", CORE, reading.atPlace(0, 0.5 * (at[2] + at[3])));
    add("thin layer", "its middle", CORE, reading.atPlace(0, 0.5 * (at[1] + at[2])));
  }

  /** Over one period at a place across: half of the middle layer, the next, half of one more. */
  static double meanOfTwoLayers(Plate plate, double acrossMetres) {
    Axis up = plate.up();
    int i = plate.across().cellAt(acrossMetres);
    double[] at = up.positions();
    double end = 0.5 * (up.linePositions()[2] + up.linePositions()[3]);
    double sum = 0;
    for (int j = 0; at[j] < end; j++) {
      double within = Math.min(end, at[j + 1]) - at[j];
      sum += within * plate.at(i, j);
    }
    return SectionHistory.BODY.percent(sum / end);
  }
}
