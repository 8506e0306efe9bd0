package seamsoak.property.critical;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Equilibrium lower critical temperature.
 *
 * <p>Ae1 = 1333 - 25 Mn + 40 Si + 42 Cr - 26 Ni in F, converted to C
 *
 * <p>Elements in wt%.
 *
 * <p>R.A. Grange, Metal Progress 79(4) (1961) 73-75; read in handbook copies.
 *
 * <p>Range: low alloy steel. Alloying elements are capped at the limits of {@link LowAlloy}.
 *
 * <p>Stated error: none in the copies.
 */
public final class Grange1961Ae1 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Grange1961Ae1(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ae1", "C", LowAlloy.ranges(0, 0.6), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    double fahrenheit = k.get("constant") + k.linear(LowAlloy.capped(c), MN, SI, CR, NI);
    return (fahrenheit - 32) / 1.8;
  }
}
