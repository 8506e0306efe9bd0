package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.steel.Element;

/** Oxides that flux in an open fire does not dissolve. */
record OxideChecks(Judge judge) implements PairFamily {
  private static final int DECIMALS = 2;

  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    if (s.sealed()) {
      return judge
          .content(
              "oxide-chromium-sealed",
              Element.CR,
              a,
              b,
              DECIMALS,
              " So much forms a film even in a closed stack: bright faces, closed at once.")
          .stream()
          .toList();
    }
    return Stream.of(
            open("oxide-chromium", Element.CR, a, b),
            open("oxide-silicon", Element.SI, a, b),
            open("oxide-aluminum", Element.AL, a, b))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Finding> open(String check, Element e, PairSteel a, PairSteel b) {
    return judge.content(
        check,
        e,
        a,
        b,
        DECIMALS,
        " Its oxide stays in the seam under plain borax: weld it in a closed stack.");
  }
}
