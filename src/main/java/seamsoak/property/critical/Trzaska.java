package seamsoak.property.critical;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.CU;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;

import java.util.List;
import seamsoak.property.correlation.Correlation;
import seamsoak.source.Range;
import seamsoak.steel.Composition;

/** The analyses behind Trzaska's regressions. The limits of V and Cu are our judgement. */
final class Trzaska {
  static final List<Range> RANGES =
      List.of(
          Correlation.range(C, 0.06, 0.68),
          Correlation.range(MN, 0, 2.04),
          Correlation.range(SI, 0, 1.75),
          Correlation.range(CR, 0, 2.3),
          Correlation.range(NI, 0, 3.85),
          Correlation.range(MO, 0, 1.05),
          Correlation.range(V, 0, 0.5),
          Correlation.range(CU, 0, 1));

  private Trzaska() {}

  /** The analysis with its alloying elements, not its carbon, brought to the limits. */
  static Composition capped(Composition c) {
    return Correlation.capped(RANGES, c, MN, SI, CR, NI, MO, V, CU);
  }
}
