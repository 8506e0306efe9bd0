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
 * Equilibrium lower critical temperature. Runs 15 to 20 C low for plain carbon steel.
 *
 * <p>Ae1 = 712 - 17.8 Mn - 19.1 Ni + 20.1 Si + 11.9 Cr + 9.8 Mo
 *
 * <p>Ae1 in C, elements in wt%.
 *
 * <p>G.T. Eldis, in J. Barralis, G. Maeder, Metallurgie (1982); read in a handbook copy.
 *
 * <p>Range: up to 0.6 %C, low alloy steel. Alloying elements are capped at the limits of {@link
 * LowAlloy}.
 *
 * <p>Stated error: none in the copies.
 */
public final class Eldis1982Ae1 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Eldis1982Ae1(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ae1", "C", LowAlloy.ranges(0, 0.6), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant") + k.linear(LowAlloy.capped(c), MN, NI, SI, CR, MO);
  }
}
