package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Grain size number and the lengths that belong to it.
 *
 * <p>G = -6.643856 log10(l) - 3.288; N = 7.75 * 2^G; d = 1 / sqrt(N)
 *
 * <p>G grain size number, l mean intercept in mm, N grains per mm2, d nominal diameter in mm.
 *
 * <p>ASTM E112, equivalent to ISO 643; table of diameters read, intercept equation from memory.
 *
 * <p>Range: G 0 to 14 as tabulated; the formula runs on beyond.
 *
 * <p>Stated error: the definition has none.
 */
public final class AstmE112 extends PublishedFormula {
  private static final double MILLIMETRE = 1e-3;

  public AstmE112(Coefficients k) {
    super(k, "grain size number", "1", List.of(), "none, a definition");
  }

  /** The number of a mean intercept. */
  public double number(double interceptMetres) {
    return k.get("slope") * Math.log10(interceptMetres / MILLIMETRE) + k.get("constant");
  }

  /** The mean intercept of a number, m. */
  public double interceptMetres(double number) {
    return Math.pow(10, (number - k.get("constant")) / k.get("slope")) * MILLIMETRE;
  }

  /** Grains per square millimetre of a number. */
  public double grainsPerSquareMillimetre(double number) {
    return k.get("grains at zero") * Math.pow(2, number);
  }

  /** Nominal diameter of a number, m. */
  public double diameterMetres(double number) {
    return MILLIMETRE / Math.sqrt(grainsPerSquareMillimetre(number));
  }
}
