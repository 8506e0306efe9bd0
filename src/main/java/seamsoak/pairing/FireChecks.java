package seamsoak.pairing;

import java.util.List;
import seamsoak.property.Correlations;

/** Forging and welding: whether both can be at one heat, and how near the hotter is to melting. */
record FireChecks(Correlations k, Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    return List.of(welding(a, b), solidus(a, b, s), forging(a, b), strength(a, b));
  }

  private Finding welding(PairSteel a, PairSteel b) {
    String says =
        a.id()
            + " welds at "
            + judge.from(a.welding())
            + ", "
            + b.id()
            + " at "
            + judge.from(b.welding())
            + judge.shared(a.welding(), b.welding());
    return judge.overlap("welding-window", a.welding(), b.welding(), says);
  }

  private Finding solidus(PairSteel a, PairSteel b, PairSetting s) {
    double heat = s.weldingCelsius().orElse(k.mechanics().welding().usualCelsius());
    double first = a.limits().solidusCelsius() - heat;
    double second = b.limits().solidusCelsius() - heat;
    String says =
        "At a welding heat of "
            + judge.at(heat)
            + " "
            + left(a.id(), first)
            + " and "
            + left(b.id(), second)
            + ".";
    return judge.values("solidus-margin", first, second, Math.min(first, second), says);
  }

  private String left(String id, double margin) {
    return margin < 0
        ? id + " is " + judge.apart(-margin) + " above where it starts to melt"
        : id + " keeps " + judge.apart(margin) + " to melting";
  }

  private Finding forging(PairSteel a, PairSteel b) {
    double overlap = Judge.overlap(a.forging(), b.forging());
    String says =
        a.id()
            + " forges from "
            + judge.at(a.forging().highC())
            + " down to "
            + judge.at(a.forging().lowC())
            + ", "
            + b.id()
            + " from "
            + judge.at(b.forging().highC())
            + " down to "
            + judge.at(b.forging().lowC())
            + (overlap < 0
                ? ": no heat suits both, " + judge.apart(-overlap) + " lie between."
                : ": " + judge.apart(overlap) + " of it together.");
    return judge.overlap("forging-window", a.forging(), b.forging(), says);
  }

  private Finding strength(PairSteel a, PairSteel b) {
    double heat = Judge.common(a.forging(), b.forging());
    double first = k.mechanics().hotStrength().megapascals(a.analysis(), heat);
    double second = k.mechanics().hotStrength().megapascals(b.analysis(), heat);
    double ratio = Math.max(first, second) / Math.min(first, second);
    String stiffer = first == second ? "Neither" : first > second ? a.id() : b.id();
    String says =
        "At "
            + judge.at(heat)
            + " "
            + a.id()
            + " withstands about "
            + Judge.number(first, 0)
            + " MPa and "
            + b.id()
            + " "
            + Judge.number(second, 0)
            + " MPa, a ratio of "
            + Judge.number(ratio, 2)
            + ": "
            + (first == second
                ? "neither spreads before the other."
                : stiffer + " is the stiffer.");
    return judge.values("hot-strength", first, second, ratio, says);
  }
}
