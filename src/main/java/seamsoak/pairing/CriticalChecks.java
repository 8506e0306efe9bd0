package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import seamsoak.property.Correlations;
import seamsoak.source.Standing;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.TemperatureRange;

/** Critical temperatures, hardening heat and which steel becomes martensite first. */
record CriticalChecks(Correlations k, Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    List<Finding> all = new ArrayList<>();
    if (!a.lines().alwaysAustenite() && !b.lines().alwaysAustenite()) {
      all.add(ac1(a, b));
      all.add(upper(a, b));
    }
    if (a.hardens() && b.hardens()) {
      all.add(hardening(a, b));
      all.add(martensite(a, b));
    }
    return all;
  }

  private Finding ac1(PairSteel a, PairSteel b) {
    double first = a.lines().a1Celsius();
    double second = b.lines().a1Celsius();
    return judge.values(
        "ac1",
        first,
        second,
        Math.abs(first - second),
        "Ac1 of "
            + a.id()
            + " "
            + judge.at(first)
            + ", of "
            + b.id()
            + " "
            + judge.at(second)
            + ": "
            + judge.apart(Math.abs(first - second))
            + " apart.");
  }

  private Finding upper(PairSteel a, PairSteel b) {
    double first = a.lines().fullAusteniteCelsius(a.analysis().carbon());
    double second = b.lines().fullAusteniteCelsius(b.analysis().carbon());
    return judge.values(
        "upper-critical",
        first,
        second,
        Math.abs(first - second),
        name(a)
            + " of "
            + a.id()
            + " "
            + judge.at(first)
            + ", "
            + name(b)
            + " of "
            + b.id()
            + " "
            + judge.at(second)
            + ": "
            + judge.apart(Math.abs(first - second))
            + " apart.");
  }

  private static String name(PairSteel s) {
    return s.lines().carbideLast(s.analysis().carbon()) ? "Accm" : "Ac3";
  }

  private Finding hardening(PairSteel a, PairSteel b) {
    TemperatureRange first = a.hardening().orElseThrow();
    TemperatureRange second = b.hardening().orElseThrow();
    return judge.miss(
        "hardening-window",
        first,
        second,
        a.id()
            + " hardens from "
            + judge.from(first)
            + reckoned(a)
            + ", "
            + b.id()
            + " from "
            + judge.from(second)
            + reckoned(b)
            + judge.shared(first, second));
  }

  private static String reckoned(PairSteel s) {
    return s.steel().heatTreatment().harden().isPresent()
        ? ""
        : " (" + Standing.COMPUTED.words() + ")";
  }

  private Finding martensite(PairSteel a, PairSteel b) {
    double heat = PairSteel.hardenCelsius(k, a, b);
    double first = ms(a, heat);
    double second = ms(b, heat);
    double gap = Math.abs(first - second);
    return judge.values(
        "ms",
        first,
        second,
        gap,
        "Hardened from "
            + judge.at(heat)
            + ", Ms of "
            + a.id()
            + " is "
            + judge.at(first)
            + " ("
            + Judge.number(a.dissolvedCarbonPct(heat), 2)
            + " % carbon in solution), of "
            + b.id()
            + " "
            + judge.at(second)
            + " ("
            + Judge.number(b.dissolvedCarbonPct(heat), 2)
            + " %): "
            + (gap < 1
                ? "they transform together."
                : (first > second ? a.id() : b.id())
                    + " transforms first, by "
                    + judge.apart(gap)
                    + ", and is stretched when the other follows."));
  }

  private double ms(PairSteel s, double heat) {
    Composition austenite = s.analysis().with(Element.C, s.dissolvedCarbonPct(heat));
    return k.critical().ms().celsius(austenite);
  }
}
