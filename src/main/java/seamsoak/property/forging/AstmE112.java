package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;

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
public final class AstmE112 {
  private static final double MILLIMETRE = 1e-3;

  private final double slope;
  private final double constant;
  private final double grainsAtZero;
  private final Correlation correlation;

  public AstmE112(Coefficients k) {
    this.slope = k.get("slope");
    this.constant = k.get("constant");
    this.grainsAtZero = k.get("grains at zero");
    this.correlation = k.describe("grain size number", "1", List.of(), "none, a definition");
  }

  /** What the standard says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** The number of a mean intercept. */
  public double number(double interceptMetres) {
    return slope * Math.log10(interceptMetres / MILLIMETRE) + constant;
  }

  /** The mean intercept of a number, m. */
  public double interceptMetres(double number) {
    return Math.pow(10, (number - constant) / slope) * MILLIMETRE;
  }

  /** Grains per square millimetre of a number. */
  public double grainsPerSquareMillimetre(double number) {
    return grainsAtZero * Math.pow(2, number);
  }

  /** Nominal diameter of a number, m. */
  public double diameterMetres(double number) {
    return MILLIMETRE / Math.sqrt(grainsPerSquareMillimetre(number));
  }
}
