package seamsoak.property.critical;

import static seamsoak.steel.Element.CU;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.steel.Composition;

/**
 * Upper critical temperature on heating.
 *
 * <p>Ac3 = 973 - 224.5 sqrt(C) - 17 Mn + 34 Si - 14 Ni + 21.6 Mo + 41.8 V - 20 Cu
 *
 * <p>Ac3 in C, elements in wt%.
 *
 * <p>J. Trzaska, L.A. Dobrzanski, J. Mater. Process. Technol. 192-193 (2007) 504; numbers read in
 * open code.
 *
 * <p>Range: 0.06 to 0.68 %C; the limits of the alloying elements, capped there, are those of {@link
 * Trzaska2016Ac1}.
 *
 * <p>Stated error: not at hand.
 */
public final class TrzaskaDobrzanski2007Ac3 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public TrzaskaDobrzanski2007Ac3(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ac3", "C", Trzaska.RANGES, "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant")
        + k.get("sqrt(C)") * Math.sqrt(c.carbon())
        + k.linear(Trzaska.capped(c), MN, SI, NI, MO, V, CU);
  }
}
