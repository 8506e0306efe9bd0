package seamsoak.billet;

/** Outer size of a billet, jacket included, m. */
public record Size(double lengthMetres, double widthMetres, double thicknessMetres) {
  /** Volume, m3. */
  public double cubicMetres() {
    return lengthMetres * widthMetres * thicknessMetres;
  }

  /** What is left when every outer face loses a depth; may come out at or below zero. */
  Size less(double lengthDepth, double widthDepth, double thicknessDepth) {
    return new Size(
        lengthMetres - 2 * lengthDepth,
        widthMetres - 2 * widthDepth,
        thicknessMetres - 2 * thicknessDepth);
  }

  Size stretched(Stretch f) {
    return new Size(
        lengthMetres * f.length(), widthMetres * f.width(), thicknessMetres * f.thickness());
  }

  /** Whether nothing is left in some direction. */
  public boolean gone() {
    return !(lengthMetres > 0 && widthMetres > 0 && thicknessMetres > 0);
  }
}
