package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.property.Correlations;
import seamsoak.steel.Element;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.Steel;

/** Soft layers, residual elements, steels that must not be normalized, and the look. */
record ShopChecks(Correlations k, Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    List<Finding> all = new ArrayList<>();
    if (a.hardens() != b.hardens()) {
      all.add(soft(a, b));
    }
    if (normalizes(a.steel()) != normalizes(b.steel())) {
      all.add(normalizing(a, b));
    }
    residual("sulfur", Element.S, a, b, "is short when hot and cracks in the seam")
        .ifPresent(all::add);
    residual("copper", Element.CU, a, b, "gathers under scale and opens cracks when hot")
        .ifPresent(all::add);
    all.add(contrast(a, b));
    return all;
  }

  private Finding soft(PairSteel a, PairSteel b) {
    double first = a.analysis().carbon();
    double second = b.analysis().carbon();
    PairSteel soft = a.hardens() ? b : a;
    return judge.values(
        "soft-layer",
        first,
        second,
        Math.min(first, second),
        a.id()
            + " has "
            + Judge.number(first, 2)
            + " % carbon and "
            + b.id()
            + " "
            + Judge.number(second, 2)
            + " %: "
            + soft.id()
            + " stays soft, so never at the edge.");
  }

  /** A sheet that tells the hardening range of a steel and no normalizing one warns by silence. */
  private static boolean normalizes(Steel s) {
    HeatTreatment t = s.heatTreatment();
    return t.harden().isEmpty() || t.normalize().isPresent();
  }

  private Finding normalizing(PairSteel a, PairSteel b) {
    double first = normalizes(a.steel()) ? 0 : 1;
    double second = normalizes(b.steel()) ? 0 : 1;
    return judge.values(
        "normalizing",
        first,
        second,
        Math.abs(first - second),
        (first > second ? a.id() : b.id())
            + " must not be normalized: it hardens or cracks in air; "
            + (first > second ? b.id() : a.id())
            + " is meant to be.");
  }

  private Optional<Finding> residual(
      String check, Element e, PairSteel a, PairSteel b, String trouble) {
    return judge.content(check, e, a, b, 3, " So much " + trouble + ".");
  }

  private Finding contrast(PairSteel a, PairSteel b) {
    double first = k.mechanics().brightness().of(a.analysis());
    double second = k.mechanics().brightness().of(b.analysis());
    double gap = Math.abs(first - second);
    String strength =
        gap < judge.limits().of("contrast-faint").watch().orElse(0)
            ? "hardly any contrast"
            : gap < judge.limits().of("contrast-strong").watch().orElse(0)
                ? "some contrast"
                : "strong contrast";
    String brighter =
        gap == 0 ? "" : ", " + (first > second ? a.id() : b.id()) + " the brighter one";
    return judge.values(
        "contrast",
        first,
        second,
        gap,
        "Etched after hardening, by nickel, chromium, manganese and phosphorus: brightness "
            + a.id()
            + " "
            + Judge.number(first, 1)
            + ", "
            + b.id()
            + " "
            + Judge.number(second, 1)
            + ", so "
            + strength
            + brighter
            + ".");
  }
}
