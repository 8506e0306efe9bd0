package seamsoak.support;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import java.util.Map;
import java.util.stream.Stream;
import seamsoak.steel.Composition;

/** Analyses at the ends of what a smith may put in a billet, by designation. */
public final class ExtremeAnalyses {
  private ExtremeAnalyses() {}

  public static Stream<Composition> all() {
    return Stream.of(
            Map.of(C, 0.0),
            Map.of(NI, 99.6, C, 0.01, MN, 0.2),
            Map.of(NI, 100.0),
            Map.of(C, 1.55, CR, 12.0, MO, 0.8, V, 0.9, MN, 0.4, SI, 0.4),
            Map.of(C, 0.05, CR, 18.5, NI, 8.5, MN, 1.5, SI, 0.5),
            Map.of(C, 1.05, CR, 17.0, MN, 0.8, SI, 0.7, MO, 0.6),
            Map.of(C, 0.02, CR, 17.0, NI, 12.0, MO, 2.2, MN, 1.5),
            Map.of(C, 0.85, CR, 4.1, MO, 5.0, W, 6.2, V, 1.9),
            Map.of(C, 0.75, CR, 4.1, W, 18.0, V, 1.1),
            Map.of(C, 1.25, MN, 13.0, SI, 0.6),
            Map.of(C, 2.1, CR, 11.5, W, 0.7),
            Map.of(C, 0.10, NI, 9.0, MN, 0.6),
            Map.of(C, 0.60, SI, 2.0, MN, 0.9),
            Map.of(C, 0.06, MN, 0.4))
        .map(Composition::of);
  }
}
