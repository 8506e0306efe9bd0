package seamsoak.property.hardening;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;

/**
 * Share of austenite that a quench leaves, with a rate that depends on the analysis.
 *
 * <p>f = exp(-a (Ms - Tq)) below Ms, 1 above it; 1000 a = 27.2 - 19.8 (1 - exp(-1.56 C)) - 0.14 Mn
 * - 0.21 Si - 0.11 Cr - 0.08 Ni - 0.05 Mo
 *
 * <p>f share of the austenite that was there above Ms; a in 1/K; Ms and Tq in C; elements in wt%
 * dissolved in the austenite.
 *
 * <p>S.M.C. van Bohemen, Mater. Sci. Technol. 28 (2012) 487; coefficients from memory.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.5 %C, judgement. Alloying elements are capped
 * at the limits of {@link LowAlloy}.
 *
 * <p>Stated error: not at hand.
 */
public final class VanBohemen2012Retained extends PublishedFormula {

  public VanBohemen2012Retained(Coefficients k) {
    super(k, "retained austenite", "1", LowAlloy.ranges(0, 1.5), "not at hand");
  }

  /** Share of retained austenite after a quench to {@code quenchCelsius}. */
  public double retained(Composition austenite, double msCelsius, double quenchCelsius) {
    Composition at = LowAlloy.capped(austenite);
    double perKelvin = k.get("constant") + k.saturation(at) + k.linear(at, MN, SI, CR, NI, MO);
    return Math.exp(-perKelvin * Math.max(0, msCelsius - quenchCelsius));
  }
}
