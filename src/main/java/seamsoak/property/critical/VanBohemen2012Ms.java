package seamsoak.property.critical;

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
 * Temperature at which martensite starts to form from austenite of this analysis.
 *
 * <p>Ms = 565 - 600 (1 - exp(-0.96 C)) - 31 Mn - 13 Si - 10 Cr - 18 Ni - 12 Mo
 *
 * <p>Ms in C, elements in wt% dissolved in the austenite.
 *
 * <p>S.M.C. van Bohemen, Mater. Sci. Technol. 28 (2012) 487; read in open research code.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.5 %C, judgement. Not capped: the floor is
 * absolute zero, which stands for none.
 *
 * <p>Stated error: not at hand.
 */
public final class VanBohemen2012Ms implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public VanBohemen2012Ms(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ms", "C", LowAlloy.ranges(0, 1.5), "not at hand");
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
