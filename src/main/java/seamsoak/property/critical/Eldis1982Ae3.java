package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Equilibrium upper critical temperature.
 *
 * <p>Ae3 = 871 - 254.4 C - 14.2 Ni + 51.7 Si
 *
 * <p>Ae3 in C, elements in wt%.
 *
 * <p>G.T. Eldis, in J. Barralis, G. Maeder, Metallurgie (1982); read in a handbook copy whose print
 * loses roots: linear carbon is the reading that gives sane values.
 *
 * <p>Range: up to 0.6 %C, low alloy steel. Alloying elements are capped at the limits of {@link
 * LowAlloy}.
 *
 * <p>Stated error: none in the copies.
 */
public final class Eldis1982Ae3 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Eldis1982Ae3(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ae3", "C", LowAlloy.ranges(0, 0.6), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant") + k.linear(LowAlloy.capped(c), C, NI, SI);
  }
}
