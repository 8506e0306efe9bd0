package seamsoak.property.hardening;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Temperature at which bainite starts to form from austenite of this analysis.
 *
 * <p>Bs = 839 - 270 (1 - exp(-1.33 C)) - 86 Mn - 23 Si - 67 Cr - 33 Ni - 75 Mo
 *
 * <p>Bs in C, elements in wt% dissolved in the austenite.
 *
 * <p>S.M.C. van Bohemen, Mater. Sci. Technol. 28 (2012) 487; read in excerpts and so remembered.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.5 %C, judgement. Not capped.
 *
 * <p>Stated error: not at hand.
 */
public final class VanBohemen2012Bs implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public VanBohemen2012Bs(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Bs", "C", LowAlloy.ranges(0, 1.5), "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return Math.max(
        ABSOLUTE_ZERO, k.get("constant") + k.saturation(c) + k.linear(c, MN, SI, CR, NI, MO));
  }
}
