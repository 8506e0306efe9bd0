package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;

/**
 * Growth of austenite grains in carbon-manganese steel.
 *
 * <p>d^10 = d0^10 + 3.87e32 t exp(-400000 / (R T))
 *
 * <p>d, d0 in um, t in s, T in K, R = 8.314 J/mol/K.
 *
 * <p>C.M. Sellars, J.A. Whiteman, Met. Sci. 13 (1979) 187; from memory.
 *
 * <p>Range: above about 1000 C; 1300 C as its upper end is judgement.
 *
 * <p>Stated error: not at hand.
 */
public final class SellarsWhiteman1979Grain {
  private static final double MICROMETRE = 1e-6;

  private final double exponent;
  private final double factor;
  private final double activationJoules;
  private final Correlation correlation;

  public SellarsWhiteman1979Grain(Coefficients k) {
    this.exponent = k.get("exponent");
    this.factor = k.get("factor");
    this.activationJoules = k.get("activation energy");
    this.correlation =
        k.describe(
            "austenite grain size",
            "m",
            List.of(Correlation.celsiusRange(1000, 1300)),
            "not at hand");
  }

  /** What the correlation says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Grain size after a time at one temperature, m. */
  public double metres(double startMetres, double kelvin, double seconds) {
    double grown = factor * seconds * Math.exp(-activationJoules / (8.314 * kelvin));
    return MICROMETRE
        * Math.pow(Math.pow(startMetres / MICROMETRE, exponent) + grown, 1 / exponent);
  }
}
