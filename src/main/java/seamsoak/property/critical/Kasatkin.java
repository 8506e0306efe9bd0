package seamsoak.property.critical;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.P;
import static seamsoak.steel.Element.S;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.property.correlation.Correlation;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/** The analyses behind the two regressions of Kasatkin and others, from memory. */
final class Kasatkin {
  private static final List<Range> WITHOUT_NICKEL =
      List.of(
          Correlation.range(C, 0, 0.83),
          Correlation.range(MN, 0, 2),
          Correlation.range(SI, 0, 1),
          Correlation.range(CR, 0, 2),
          Correlation.range(MO, 0, 1),
          Correlation.range(V, 0, 0.5),
          Correlation.range(W, 0, 1),
          Correlation.range(AL, 0, 0.2),
          Correlation.range(P, 0, 0.04),
          Correlation.range(S, 0, 0.04));

  private static final List<Range> RANGES = ranges(3);
  private static final Element[] ALLOYING = {MN, SI, CR, MO, NI, V, W, AL, P, S};

  private Kasatkin() {}

  /** The ranges, with the nickel that one of the two stands for. */
  static List<Range> ranges(double mostNickel) {
    return Stream.concat(WITHOUT_NICKEL.stream(), Stream.of(Correlation.range(NI, 0, mostNickel)))
        .toList();
  }

  /** The analysis with its alloying elements, not its carbon, brought to the limits. */
  static Composition capped(Composition c) {
    return Correlation.capped(RANGES, c, ALLOYING);
  }
}
