package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.source.Range;
import seamsoak.steel.Composition;

/**
 * Temperature at which martensite starts to form from austenite of this analysis.
 *
 * <p>Ms = 561 - 474 C - 33 Mn - 17 Cr - 17 Ni - 21 Mo
 *
 * <p>Ms in C, elements in wt% dissolved in the austenite.
 *
 * <p>W. Steven, A.G. Haynes, J. Iron Steel Inst. 183 (1956) 349; read in open research code.
 *
 * <p>Range: 0.1 to 0.55 %C; from memory 0.2 to 1.7 Mn, 0 to 3.5 Cr, 0 to 5 Ni, 0 to 1 Mo. Far too
 * low above 0.9 %C. Not capped: the floor is absolute zero, which stands for none.
 *
 * <p>Stated error: not at hand.
 */
public final class StevenHaynes1956Ms implements CriticalTemperature {
  private static final List<Range> RANGES =
      List.of(
          Correlation.range(C, 0.1, 0.55),
          Correlation.range(MN, 0.2, 1.7),
          Correlation.range(CR, 0, 3.5),
          Correlation.range(NI, 0, 5),
          Correlation.range(MO, 0, 1));

  private final Coefficients k;
  private final Correlation correlation;

  public StevenHaynes1956Ms(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ms", "C", RANGES, "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return Math.max(ABSOLUTE_ZERO, k.get("constant") + k.linear(c, C, MN, CR, NI, MO));
  }
}
