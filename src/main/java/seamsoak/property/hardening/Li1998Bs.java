package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Temperature at which bainite starts to form from austenite of this analysis.
 *
 * <p>Bs = 637 - 58 C - 35 Mn - 15 Ni - 34 Cr - 41 Mo
 *
 * <p>Bs in C, elements in wt% dissolved in the austenite.
 *
 * <p>M.V. Li et al., Metall. Mater. Trans. B 29 (1998) 661; read in excerpts and so remembered.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.0 %C, judgement. Not capped.
 *
 * <p>Stated error: not at hand.
 */
public final class Li1998Bs implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Li1998Bs(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Bs", "C", LowAlloy.ranges(0, 1.0), "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return Math.max(ABSOLUTE_ZERO, k.get("constant") + k.linear(c, C, MN, NI, CR, MO));
  }
}
