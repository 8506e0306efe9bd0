package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Temperature at which martensite starts to form from austenite of this analysis.
 *
 * <p>Ms = 539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr - 7.5 Mo
 *
 * <p>Ms in C, elements in wt% dissolved in the austenite.
 *
 * <p>K.W. Andrews, J. Iron Steel Inst. 203 (1965) 721-727; read in open research code.
 *
 * <p>Range: up to 0.6 %C; Mn, Cr, Ni, Mo up to 5 % from memory. Far too low above 0.9 %C. Not
 * capped: the floor is absolute zero, which stands for none.
 *
 * <p>Stated error: not at hand.
 */
public final class Andrews1965MsLinear implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Andrews1965MsLinear(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ms", "C", LowAlloy.ranges(0, 0.6), "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return Math.max(ABSOLUTE_ZERO, k.get("constant") + k.linear(c, C, MN, NI, CR, MO));
  }
}
