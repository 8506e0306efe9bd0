package seamsoak.property.critical;

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
 * <p>Ac3 = 925 - 219 sqrt(C) - 7 Mn + 39 Si - 16 Ni + 13 Mo + 97 V
 *
 * <p>Ac3 in C, elements in wt%.
 *
 * <p>J. Trzaska, Arch. Metall. Mater. 61 (2016) 981-986; coefficients from memory.
 *
 * <p>Range: 0.06 to 0.68 %C, up to 2.04 Mn, 1.75 Si, 2.3 Cr, 3.85 Ni, 1.05 Mo; alloying elements
 * are capped there.
 *
 * <p>Stated error: not at hand.
 */
public final class Trzaska2016Ac3 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Trzaska2016Ac3(Coefficients k) {
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
        + k.linear(Trzaska.capped(c), MN, SI, NI, MO, V);
  }
}
