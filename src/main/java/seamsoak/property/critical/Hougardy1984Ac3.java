package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Upper critical temperature on heating.
 *
 * <p>Ac3 = 902 - 255 C - 11 Mn + 19 Si - 5 Cr + 13 Mo - 20 Ni + 55 V
 *
 * <p>Ac3 in C, elements in wt%.
 *
 * <p>H.P. Hougardy, Werkstoffkunde Stahl Bd. 1 (1984) 229; read in open code.
 *
 * <p>Range: 0.1 to 0.6 %C, low alloy steel. Alloying elements are capped at the limits of {@link
 * LowAlloy}.
 *
 * <p>Stated error: none in the copies.
 */
public final class Hougardy1984Ac3 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Hougardy1984Ac3(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ac3", "C", LowAlloy.ranges(0.1, 0.6), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant") + k.linear(LowAlloy.capped(c), C, MN, SI, CR, MO, NI, V);
  }
}
