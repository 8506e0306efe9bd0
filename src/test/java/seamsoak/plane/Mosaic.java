package seamsoak.plane;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The section of the demo billet through its steps. Across is the width and up the thickness; after
 * tiling up is square to the tiles' seams, through one tile and round to the next. The stack is a
 * quarter of the section, cut at its planes of symmetry; all else is whole.
 */
final class Mosaic {
  private static final double INCH = 25.4e-3;
  private static final int LAYERS = 13;
  private static final double THICK = INCH / 8;
  private static final double THIN = 3 * INCH / 32;
  private static final double WIDTH = 1.5 * INCH;
  private static final double SHEET = 0.045 * INCH;
  private static final double BRUSHED = 0.010 * INCH;
  private static final Sides QUARTER =
      new Sides(Sides.SEALED, Sides.OPEN, Sides.SEALED, Sides.OPEN);
  private static final Sides OPEN = Sides.all(Sides.OPEN);
  private static final Sides COVERED = Sides.all(Sides.COVERED);
  private static final List<Stay> WELD = Collections.nCopies(3, Stay.fahrenheit(2250, 5));
  private static final List<Stay> DRAW = Collections.nCopies(6, Stay.fahrenheit(2100, 3));

  private final Furnace furnace;
  private final Bench bench;
  private final PlaneMetal sheet;
  private final int last;
  private final Map<Integer, Plate> after = new TreeMap<>();
  private Plate plate;

  /**
   * @param sheet metal of the tiles' jacket
   * @param last step after which to stop
   */
  private Mosaic(Furnace furnace, PlaneMetal sheet, int last) {
    this.furnace = furnace;
    this.bench = new Bench(furnace);
    this.sheet = sheet;
    this.last = last;
  }

  /** The section after each step, of one solid bar as large as the stack. */
  static Map<Integer, Plate> solid(PlaneMetal steel, PlaneMetal sheet, Furnace furnace, int last) {
    Mosaic m = new Mosaic(furnace, sheet, last);
    double thickness = 7 * THICK + 6 * THIN;
    Plate bar =
        Plate.of(
            steel,
            Axis.of(WIDTH / 2, Line.MIDDLE, Line.OUTSIDE),
            Axis.of(thickness / 2, Line.MIDDLE, Line.OUTSIDE));
    m.stack(m.bench.heated(bar, QUARTER, WELD));
    return m.after;
  }

  /** The section after each step, of the stack of layers, thick and thin in turn. */
  static Map<Integer, Plate> layered(
      PlaneMetal thick, PlaneMetal thin, PlaneMetal sheet, Furnace furnace, int last) {
    Mosaic m = new Mosaic(furnace, sheet, last);
    m.stack(m.weldedLayers(thick, thin));
    return m.after;
  }

  /** From the middle layer, of which half is taken, to the outermost. */
  private Plate weldedLayers(PlaneMetal thick, PlaneMetal thin) {
    int half = LAYERS / 2;
    Plate[][] layers = new Plate[1][half + 1];
    for (int k = 0; k <= half; k++) {
      boolean even = (half - k) % 2 == 0;
      double metres = (even ? THICK : THIN) * (k == 0 ? 0.5 : 1);
      layers[0][k] =
          Plate.of(
              even ? thick : thin,
              Axis.of(WIDTH / 2, Line.MIDDLE, Line.OUTSIDE),
              Axis.of(metres, k == 0 ? Line.MIDDLE : Line.OUTSIDE, Line.OUTSIDE));
    }
    return bench.welded(layers, QUARTER, Line.seam("layer"), WELD);
  }

  private void stack(Plate welded) {
    plate = welded;
    after.put(1, plate);
    plate = bench.drawn(plate, QUARTER, INCH / 2, INCH / 2, DRAW);
    after.put(2, plate);
    if (last > 2) {
      plate = Bench.groundRightAndTop(plate, 0.015 * INCH);
      plate = plate.mirrored().exchanged().mirrored().exchanged();
      restack("restack 4");
      after.put(5, plate);
    }
    if (last > 5) {
      restackAgain();
    }
    if (last > 10) {
      tiles();
    }
  }

  private void restackAgain() {
    plate = bench.drawn(plate, OPEN, INCH, INCH, DRAW);
    after.put(6, plate);
    plate = Bench.ground(plate, 0.015 * INCH);
    restack("restack 8");
    after.put(9, plate);
    List<Stay> stays = Collections.nCopies(8, Stay.fahrenheit(2100, 4));
    plate = bench.drawn(plate, OPEN, 1.125 * INCH, 1.125 * INCH, stays);
    after.put(10, plate);
  }

  private void restack(String name) {
    plate = bench.welded(Bench.restacked(plate, 2, 2, true), OPEN, Line.seam(name), WELD);
  }

  private void tiles() {
    Stay weld = Stay.fahrenheit(2200, 5);
    plate = furnace.heat(plate, weld, COVERED).plate();
    TileRow row = TileRow.of(Math.toRadians(45), 0.625 * INCH, SHEET).covered(furnace, weld);
    plate = plate.closedUp(Line.seam("tile 11"));
    plate = jacketed(plate, row.sheet());
    plate = furnace.heat(plate, weld, OPEN).plate();
    row = row.open(furnace, weld);
    after.put(12, plate);

    Stay press = Stay.fahrenheit(2050, 2);
    for (int k = 0; k < 2; k++) {
      plate = furnace.heat(plate, press, OPEN).plate();
      row = row.open(furnace, press);
      TileRow.Stretch f = TileRow.Stretch.ofThickness(row.partTo(0.375 * INCH, 2 - k));
      plate = plate.scaled(f.width(), row.thinning(f));
      row = row.stretched(f);
    }
    after.put(13, plate);

    plate = unjacketed(plate);
    row = row.unjacketed(BRUSHED);
    Stay roll = Stay.fahrenheit(2000, 2);
    plate = furnace.heat(plate, roll, OPEN).plate();
    row = row.open(furnace, roll);
    TileRow.Stretch f = TileRow.Stretch.ofSection(1, row.partTo(0.25 * INCH, 1));
    plate = plate.scaled(f.width(), row.thinning(f));
    after.put(15, plate);
  }

  private Plate jacketed(Plate body, double metres) {
    Axis wide = furnace.mesh().cells(Axis.of(metres, Line.OUTSIDE, Line.OUTSIDE));
    Plate side = Plate.of(sheet, wide, body.up());
    Line joint = Line.seam("sheet");
    return side.beside(body, joint).beside(side, joint);
  }

  private static Plate unjacketed(Plate whole) {
    return unjacketedLeft(unjacketedLeft(whole).reversed()).reversed();
  }

  private static Plate unjacketedLeft(Plate whole) {
    return whole.ground(whole.across().linePositions()[1] + BRUSHED);
  }
}
