package seamsoak.property.critical;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.CU;
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
 * Temperature at which martensite starts to form from austenite of this analysis.
 *
 * <p>Ms = 545 - 601.2 (1 - exp(-0.868 C)) - 34.4 Mn - 13.7 Si - 9.2 Cr - 17.3 Ni - 15.4 Mo + 10.8 V
 * - 1.4 Al - 16.3 Cu (and + 4.7 Co - 361 Nb - 2.44 Ti - 3448 B, which an analysis does not name)
 *
 * <p>Ms in C, elements in wt% dissolved in the austenite.
 *
 * <p>D. Barbier, Adv. Eng. Mater. 16 (2014) 122; read in open research code.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.5 %C, judgement. Not capped: the floor is
 * absolute zero, which stands for none.
 *
 * <p>Stated error: not at hand.
 */
public final class Barbier2014Ms implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Barbier2014Ms(Coefficients k) {
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
        k.get("constant") + k.saturation(c) + k.linear(c, MN, SI, CR, NI, MO, V, AL, CU));
  }
}
