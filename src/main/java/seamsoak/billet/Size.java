package seamsoak.billet;

import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** Outer size of a billet, jacket included, m. */
public record Size(double lengthMetres, double widthMetres, double thicknessMetres) {
  /** What is thicker is beyond any fire of a smith; judgement. */
  public static final double THICKEST_METRES = 0.5;

  /** What is thinner is no billet any more but a foil that any fire eats; judgement. */
  private static final double THINNEST_METRES = 0.25e-3;

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

  Size withThickness(double metres) {
    return new Size(lengthMetres, widthMetres, metres);
  }

  Size stretched(Stretch f) {
    return new Size(
        lengthMetres * f.length(), widthMetres * f.width(), thicknessMetres * f.thickness());
  }

  /** Whether nothing is left in some direction. */
  boolean gone() {
    return !(lengthMetres > 0 && widthMetres > 0 && thicknessMetres > 0);
  }

  /** Whether its section is a foil. */
  public boolean tooThin() {
    return !(section() >= THINNEST_METRES);
  }

  /** {@code IllegalArgumentException} with a sentence where no billet can be so thin or thick. */
  void requireBillet(UnitSystem units) {
    if (tooThin()) {
      throw new CannotBeDone(
          "the billet would be thinner than " + new Length(THINNEST_METRES).format(units),
          "take less off it, or begin with more");
    }
    if (section() > THICKEST_METRES) {
      throw new CannotBeDone(
          "the billet would be thicker and wider than " + new Length(THICKEST_METRES).format(units),
          "begin with a smaller stack, or draw it before it is stacked again");
    }
  }

  /** The smaller side of the section, m. */
  private double section() {
    return Math.min(thicknessMetres, widthMetres);
  }
}
