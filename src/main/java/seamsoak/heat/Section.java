package seamsoak.heat;

/**
 * What heat has to cross on its way to the middle of a piece: thickness and width, ends neglected.
 *
 * <p>Heat is followed along the thickness only. The area that it crosses at a distance x from the
 * middle goes as x to the power t / w: a wide plate (0) and a round bar (1) exactly, and between
 * them the right volume per surface. A square bar counts as a round one of its thickness; its
 * middle lags by 18 % more in the hardest quench, 5 % at Bi = 0.3, 1 % in air.
 *
 * @param thicknessMetres the smaller side
 * @param widthMetres the larger side; infinite for a plate, equal to the thickness for a bar
 */
public record Section(double thicknessMetres, double widthMetres) {
  public Section {
    if (!(thicknessMetres > 0 && widthMetres > 0) || Double.isInfinite(thicknessMetres)) {
      throw new IllegalArgumentException("a section needs a thickness and a width above 0");
    }
    if (thicknessMetres > widthMetres) {
      double smaller = widthMetres;
      widthMetres = thicknessMetres;
      thicknessMetres = smaller;
    }
  }

  /** A plate or blade much wider than thick. */
  public static Section plate(double thicknessMetres) {
    return new Section(thicknessMetres, Double.POSITIVE_INFINITY);
  }

  /** A round or square bar. */
  public static Section bar(double diameterMetres) {
    return new Section(diameterMetres, diameterMetres);
  }

  /** 0 for a plate, 1 for a bar. */
  public double roundness() {
    return thicknessMetres / widthMetres;
  }
}
