package seamsoak.property.correlation;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.CU;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.P;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import java.util.ArrayList;
import java.util.List;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * The range of regressions that their sources give for "low alloy steel" without figures: these
 * limits are our judgement. Beyond them such a regression is evaluated at the limit, so that 12 %
 * chromium or pure nickel gives a number that means something, and reports the range it left.
 */
public final class LowAlloy {
  private static final List<Range> LIMITS =
      List.of(
          Correlation.range(MN, 0, 2),
          Correlation.range(SI, 0, 2),
          Correlation.range(V, 0, 2),
          Correlation.range(CR, 0, 5),
          Correlation.range(NI, 0, 5),
          Correlation.range(MO, 0, 5),
          Correlation.range(W, 0, 5),
          Correlation.range(CU, 0, 1),
          Correlation.range(AL, 0, 1),
          Correlation.range(P, 0, 0.1));

  private LowAlloy() {}

  /** The ranges of the alloying elements. */
  public static List<Range> ranges() {
    return LIMITS;
  }

  /** The range of one element, none for carbon. */
  public static List<Range> range(Element e) {
    return LIMITS.stream().filter(r -> r.quantity().equals(e.symbol())).toList();
  }

  /** The ranges, with the carbon range of the source. */
  public static List<Range> ranges(double lowestCarbon, double highestCarbon) {
    List<Range> all = new ArrayList<>(LIMITS);
    all.add(0, Correlation.range(C, lowestCarbon, highestCarbon));
    return all;
  }

  /** The analysis with its alloying elements, not its carbon, brought to the limits. */
  public static Composition capped(Composition c) {
    return Correlation.capped(LIMITS, c);
  }
}
