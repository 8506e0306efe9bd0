package seamsoak.plane;

/** How open each side of a plate is to the fire: 1 bare, 0.5 covered, 0 sealed or a symmetry. */
record Sides(double left, double right, double bottom, double top) {
  static final double OPEN = 1;
  static final double COVERED = 0.5;
  static final double SEALED = 0;

  static final Sides NONE = all(SEALED);

  static Sides all(double share) {
    return new Sides(share, share, share, share);
  }
}
