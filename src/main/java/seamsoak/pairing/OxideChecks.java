package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import seamsoak.steel.Element;

/** Oxides that flux in an open fire does not dissolve. */
record OxideChecks(Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    List<Finding> all = new ArrayList<>();
    oxide(all, s.sealed() ? "oxide-chromium-sealed" : "oxide-chromium", Element.CR, a, b, s);
    if (!s.sealed()) {
      oxide(all, "oxide-silicon", Element.SI, a, b, s);
      oxide(all, "oxide-aluminum", Element.AL, a, b, s);
    }
    return all;
  }

  private void oxide(
      List<Finding> all, String check, Element e, PairSteel a, PairSteel b, PairSetting s) {
    double first = a.percent(e);
    double second = b.percent(e);
    double most = Math.max(first, second);
    if (most == 0) {
      return;
    }
    String says =
        a.id()
            + " has "
            + Judge.number(first, 2)
            + " % "
            + e.symbol()
            + " and "
            + b.id()
            + " "
            + Judge.number(second, 2)
            + " %.";
    if (judge.limits().of(check).rate(most) != Rating.FITS) {
      says +=
          s.sealed()
              ? " So much forms a film even in a closed stack: bright faces, closed at once."
              : " Its oxide stays in the seam under plain borax: weld it in a closed stack.";
    }
    all.add(judge.values(check, first, second, most, says));
  }
}
