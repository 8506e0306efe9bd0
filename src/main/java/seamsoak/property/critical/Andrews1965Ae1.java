package seamsoak.property.critical;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.W;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Equilibrium lower critical temperature.
 *
 * <p>Ae1 = 723 - 10.7 Mn - 16.9 Ni + 29.1 Si + 16.9 Cr + 6.38 W (and + 290 As, which an analysis
 * does not name)
 *
 * <p>Ae1 in C, elements in wt%.
 *
 * <p>K.W. Andrews, J. Iron Steel Inst. 203 (1965) 721-727; read in handbook copies.
 *
 * <p>Range: low alloy steel up to 0.6 %C. Alloying elements are capped at the limits of {@link
 * LowAlloy}.
 *
 * <p>Stated error: none in the copies.
 */
public final class Andrews1965Ae1 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Andrews1965Ae1(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ae1", "C", LowAlloy.ranges(0, 0.6), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant") + k.linear(LowAlloy.capped(c), MN, NI, SI, CR, W);
  }
}
