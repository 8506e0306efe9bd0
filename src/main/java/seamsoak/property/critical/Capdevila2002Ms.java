package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.CU;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.W;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.source.Range;
import seamsoak.steel.Composition;

/**
 * Temperature at which martensite starts to form from austenite of this analysis.
 *
 * <p>Ms = 764.2 - 302.6 C - 30.6 Mn - 16.6 Ni - 8.9 Cr + 2.4 Mo - 11.3 Cu + 7.4 W - 14.5 Si in K,
 * converted to C (and + 8.58 Co, which an analysis does not name)
 *
 * <p>Ms in C, elements in wt% dissolved in the austenite.
 *
 * <p>C. Capdevila, F.G. Caballero, C. Garcia de Andres, ISIJ Int. 42 (2002) 894; read in open
 * research code, Cu and W from memory.
 *
 * <p>Range: from memory 0 to 1.65 C, 3.76 Mn, 3.40 Si, 17.9 Cr, 27.2 Ni, 5.1 Mo, 12.9 W, 0.98 Cu.
 * Not capped: the floor is absolute zero, which stands for none.
 *
 * <p>Stated error: not at hand.
 */
public final class Capdevila2002Ms implements CriticalTemperature {
  private static final List<Range> RANGES =
      List.of(
          Correlation.range(C, 0, 1.65),
          Correlation.range(MN, 0, 3.76),
          Correlation.range(SI, 0, 3.4),
          Correlation.range(CR, 0, 17.9),
          Correlation.range(NI, 0, 27.2),
          Correlation.range(MO, 0, 5.1),
          Correlation.range(W, 0, 12.9),
          Correlation.range(CU, 0, 0.98));

  private final Coefficients k;
  private final Correlation correlation;

  public Capdevila2002Ms(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ms", "C", RANGES, "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    return Math.max(
        ABSOLUTE_ZERO,
        k.get("constant") + k.linear(c, C, MN, NI, CR, MO, CU, W, SI) + ABSOLUTE_ZERO);
  }
}
