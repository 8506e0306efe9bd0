package seamsoak.plane;

/**
 * A grid line that cells never cross: an outer face, a seam, a boundary of layers, a plane of
 * symmetry.
 *
 * @param name what it is
 * @param spread diffusion time since it was made, scaled with the metal, m2; tells how fine cells
 *     must be there
 */
record Line(String name, double spread) {
  static final Line OUTSIDE = new Line("outside", 0);
  static final Line MIDDLE = new Line("middle", Double.POSITIVE_INFINITY);

  static Line seam(String name) {
    return new Line(name, 0);
  }

  boolean outside() {
    return name.equals(OUTSIDE.name);
  }

  Line older(double squareMetres) {
    return outside() ? this : new Line(name, spread + squareMetres);
  }

  Line scaled(double factor) {
    return new Line(name, spread * factor * factor);
  }
}
