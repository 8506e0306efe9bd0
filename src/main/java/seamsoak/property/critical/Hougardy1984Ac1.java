package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
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
 * Lower critical temperature on heating.
 *
 * <p>Ac1 = 739 - 22 C - 7 Mn + 2 Si + 14 Cr + 13 Mo - 13 Ni
 *
 * <p>Ac1 in C, elements in wt%.
 *
 * <p>H.P. Hougardy, Werkstoffkunde Stahl Bd. 1 (1984) 229; numbers read in a copy, signs from
 * memory.
 *
 * <p>Range: 0.1 to 0.6 %C, low alloy. Alloying elements are capped at the limits of {@link
 * LowAlloy}.
 *
 * <p>Stated error: none in the copy.
 */
public final class Hougardy1984Ac1 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Hougardy1984Ac1(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ac1", "C", LowAlloy.ranges(0.1, 0.6), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant") + k.linear(LowAlloy.capped(c), C, MN, SI, CR, MO, NI);
  }
}
