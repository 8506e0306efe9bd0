package seamsoak.property.critical;

import static seamsoak.steel.Element.AL;
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
 * Temperature at which martensite starts to form from austenite of this analysis.
 *
 * <p>Ms = 530.2 - 290.3 C - 35.5 Mn - 6.8 Si - 17.2 Ni - 20.8 Cr - 10.4 Mo + 7.1 Al - 75 (1 -
 * exp(-0.96 C)) (and + 4.8 Co, which an analysis does not name)
 *
 * <p>Ms in C, elements in wt% dissolved in the austenite.
 *
 * <p>J. Ingber, M. Kunert, steel research int. 93 (2022) 2100576, for high-carbon steel; read in
 * the code issued with it.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.5 %C, judgement. Not capped: the floor is
 * absolute zero, which stands for none.
 *
 * <p>Stated error: not at hand.
 */
public final class IngberKunert2022Ms implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public IngberKunert2022Ms(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ms", "C", LowAlloy.ranges(0, 1.5), "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return Math.max(
        ABSOLUTE_ZERO,
        k.get("constant") + k.saturation(c) + k.linear(c, C, MN, SI, NI, CR, MO, AL));
  }
}
