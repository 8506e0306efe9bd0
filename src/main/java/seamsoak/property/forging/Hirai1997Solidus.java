package seamsoak.property.forging;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.P;
import static seamsoak.steel.Element.S;
import static seamsoak.steel.Element.SI;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Temperature at which the first liquid forms in cast, segregated steel.
 *
 * <p>Ts = T(C) - 20.5 Si - 6.5 Mn - 2.0 Cr - 11.5 Ni - 5.5 Al - 500 P - 700 S, with T(C) = 1538 -
 * 478 C up to 0.09 %C, 1495 up to 0.17 %C, 1527 - 187.5 C above
 *
 * <p>Ts in C, elements in wt%.
 *
 * <p>Hirai's formula as restated in Baosteel Technol. 1997(3) 20; read in a casting script that
 * cites handbooks.
 *
 * <p>Range: not at hand; taken as low alloy up to 1.5 %C, judgement. Alloying elements are capped
 * at the limits of {@link LowAlloy}, P and S at 0.1 %.
 *
 * <p>Stated error: none in the copy.
 */
public final class Hirai1997Solidus extends PublishedFormula implements CriticalTemperature {
  private static final Range SULFUR = Correlation.range(S, 0, 0.1);
  private static final Element[] ELEMENTS = {SI, MN, CR, NI, AL, P, S};

  public Hirai1997Solidus(Coefficients k) {
    super(
        k,
        "solidus",
        "C",
        Stream.concat(LowAlloy.ranges(0, 1.5).stream(), Stream.of(SULFUR)).toList(),
        "none stated");
  }

  @Override
  public double celsius(Composition c) {
    Composition at = Correlation.capped(List.of(SULFUR), LowAlloy.capped(c));
    return ironCarbon(c.carbon()) + k.linear(at, ELEMENTS);
  }

  private double ironCarbon(double carbon) {
    if (carbon <= 0.09) {
      return k.get("constant to 0.09 %C") + k.get("C to 0.09 %C") * carbon;
    }
    if (carbon <= 0.17) {
      return k.get("constant to 0.17 %C");
    }
    return k.get("constant above 0.17 %C") + k.get("C above 0.17 %C") * carbon;
  }
}
