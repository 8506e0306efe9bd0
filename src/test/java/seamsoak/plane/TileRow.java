package seamsoak.plane;

/**
 * A row of tiles in its sheet: what a section square to their seams does not show.
 *
 * @param thickness of it all, m
 * @param sheet thickness of the sheet on top and below, m
 * @param lengthwise share of the seams' normal along the row
 * @param upright share of the seams' normal across the thickness
 */
record TileRow(double thickness, double sheet, double lengthwise, double upright) {
  /** Volume is kept. */
  record Stretch(double length, double width, double thickness) {
    static Stretch ofSection(double width, double thickness) {
      return new Stretch(1 / (width * thickness), width, thickness);
    }

    /** Spreading as much in length as in width. */
    static Stretch ofThickness(double thickness) {
      return new Stretch(1 / Math.sqrt(thickness), 1 / Math.sqrt(thickness), thickness);
    }
  }

  static TileRow of(double radians, double slice, double sheet) {
    return new TileRow(slice + 2 * sheet, sheet, Math.sin(radians), Math.cos(radians));
  }

  /** After a stay with the sheet still loose: scale eats the sheet outside and the tiles below. */
  TileRow covered(Furnace furnace, Stay stay) {
    double below = furnace.eaten(stay, Sides.COVERED);
    return open(furnace, stay).with(-2 * below, 0);
  }

  TileRow open(Furnace furnace, Stay stay) {
    double eaten = furnace.eaten(stay, Sides.OPEN);
    return with(-2 * eaten, -eaten);
  }

  TileRow unjacketed(double deeper) {
    return with(-2 * (sheet + deeper), -sheet);
  }

  private TileRow with(double more, double moreSheet) {
    return new TileRow(thickness + more, sheet + moreSheet, lengthwise, upright);
  }

  /** Factor on the thickness of the first of so many equal parts of the way to a thickness. */
  double partTo(double metres, int parts) {
    return Math.pow(metres / thickness, 1.0 / parts);
  }

  /** Factor on distances square to the seams. */
  double thinning(Stretch f) {
    return 1 / Math.hypot(lengthwise / f.length(), upright / f.thickness());
  }

  TileRow stretched(Stretch f) {
    double k = thinning(f);
    return new TileRow(
        thickness * f.thickness(),
        sheet * f.thickness(),
        k * lengthwise / f.length(),
        k * upright / f.thickness());
  }
}
