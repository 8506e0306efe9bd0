package seamsoak.billet;

/** A unit vector in the billet's own directions: length, width, thickness. */
public record Direction(double length, double width, double thickness) {
  public static final Direction LENGTH = new Direction(1, 0, 0);
  public static final Direction WIDTH = new Direction(0, 1, 0);
  public static final Direction THICKNESS = new Direction(0, 0, 1);

  /** Planes closer than this to parallel with a face make no line on it. */
  private static final double PARALLEL = 1e-4;

  /** Factor on the distance between planes with this normal. */
  double thinning(Stretch f) {
    return 1
        / Math.hypot(Math.hypot(length / f.length(), width / f.width()), thickness / f.thickness());
  }

  /** Normal of the same planes after a stretch. */
  Direction stretched(Stretch f) {
    double k = thinning(f);
    return new Direction(
        k * length / f.length(), k * width / f.width(), k * thickness / f.thickness());
  }

  /** After a quarter turn about the length. */
  Direction turned() {
    return new Direction(length, thickness, width);
  }

  /** After cutting at an angle to the length and laying the slices with the cut face up. */
  Direction tiled(double radians) {
    double cos = Math.cos(radians);
    double sin = Math.sin(radians);
    return new Direction(length * cos + thickness * sin, width, thickness * cos - length * sin);
  }

  /**
   * Width of a line on a face over its true width, for planes with this normal; infinite where they
   * run along under the face and make no line on it.
   */
  public double traceOn(Direction face) {
    double along = length * face.length + width * face.width + thickness * face.thickness;
    double rest = 1 - along * along;
    return rest < PARALLEL ? Double.POSITIVE_INFINITY : 1 / Math.sqrt(rest);
  }
}
