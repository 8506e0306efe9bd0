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
 * <p>Bs = 830 - 270 C - 90 Mn - 37 Ni - 70 Cr - 83 Mo
 *
 * <p>Bs in C, elements in wt% dissolved in the austenite.
 *
 * <p>W. Steven, A.G. Haynes, JISI 183 (1956) 349; terms of the elements read, the constant from
 * memory (one copy has 810 with them).
 *
 * <p>Range: 0.1 to 0.55 %C, low alloy by our judgement. Not capped.
 *
 * <p>Stated error: not at hand.
 */
public final class StevenHaynes1956Bs implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public StevenHaynes1956Bs(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Bs", "C", LowAlloy.ranges(0.1, 0.55), "not at hand");
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
