package seamsoak.pairing;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.steel.Element;

/** Oxides that flux in an open fire does not dissolve. */
record OxideChecks(Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    Stream<Finding> found =
        s.sealed()
            ? judge.content(CheckName.OXIDE_CHROMIUM_SEALED, Element.CR, a, b)
            : Stream.of(
                    judge.content(CheckName.OXIDE_CHROMIUM, Element.CR, a, b),
                    judge.content(CheckName.OXIDE_SILICON, Element.SI, a, b),
                    judge.content(CheckName.OXIDE_ALUMINUM, Element.AL, a, b))
                .flatMap(f -> f);
    return found.toList();
  }
}
