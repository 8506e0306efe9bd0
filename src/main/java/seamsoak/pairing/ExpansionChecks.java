package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import seamsoak.property.Correlations;
import seamsoak.property.forging.Mechanics;

/** Growth with heat and on transformation. */
record ExpansionChecks(Correlations k, Judge judge) implements PairFamily {
  /** Below this a layer no longer gives way, C; judgement. */
  private static final double STIFF_CELSIUS = 600;

  private static final double ROOM_CELSIUS = 20;

  /** Where all is austenite, C. */
  private static final double GAMMA_CELSIUS = 950;

  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    Mechanics m = k.mechanics();
    double heat = s.heat(m.welding().usualCelsius(), a, b);
    List<Finding> all = new ArrayList<>();
    all.add(
        pair(
            "expansion-cold",
            a,
            b,
            m.meanCold(a.steel(), a.lines(), STIFF_CELSIUS),
            m.meanCold(b.steel(), b.lines(), STIFF_CELSIUS),
            "From room heat to " + judge.at(STIFF_CELSIUS) + ", where layers no longer give way"));
    all.add(
        pair(
            "expansion-to-weld",
            a,
            b,
            mean(m, a, ROOM_CELSIUS, heat),
            mean(m, b, ROOM_CELSIUS, heat),
            "From room heat to welding at " + judge.at(heat) + ", transformation and all"));
    all.add(
        pair(
            "expansion-gamma",
            a,
            b,
            mean(m, a, GAMMA_CELSIUS, heat),
            mean(m, b, GAMMA_CELSIUS, heat),
            "As austenite, from " + judge.at(GAMMA_CELSIUS) + " to " + judge.at(heat)));
    if (a.hardens() || b.hardens()) {
      all.add(growth(m, a, b));
    }
    return all;
  }

  private Finding pair(
      String check, PairSteel a, PairSteel b, double first, double second, String where) {
    double gap = Math.abs(first - second);
    return judge.values(
        check,
        first,
        second,
        gap,
        where
            + ", "
            + a.id()
            + " grows "
            + Judge.number(first, 1)
            + " and "
            + b.id()
            + " "
            + Judge.number(second, 1)
            + " millionths per degree C: "
            + Judge.number(gap, 1)
            + " apart.");
  }

  private static double mean(Mechanics m, PairSteel s, double from, double to) {
    double below = from == ROOM_CELSIUS ? 0 : m.elongationHot(s.steel(), s.lines(), from);
    return 1e6 * (m.elongationHot(s.steel(), s.lines(), to) - below) / (to - from);
  }

  private Finding growth(Mechanics m, PairSteel a, PairSteel b) {
    double first = growth(m, a);
    double second = growth(m, b);
    double gap = Math.abs(first - second);
    return judge.values(
        "transformation",
        first,
        second,
        gap,
        "When its austenite becomes martensite "
            + a.id()
            + " grows by "
            + Judge.number(first, 2)
            + " % in length and "
            + b.id()
            + " by "
            + Judge.number(second, 2)
            + " %: "
            + Judge.number(gap, 2)
            + " % apart.");
  }

  private double growth(Mechanics m, PairSteel s) {
    if (s.lines().alwaysAustenite()) {
      return 0;
    }
    double carbon =
        s.hardening()
            .map(k.hardening().window()::heatCelsius)
            .map(s::dissolvedCarbonPct)
            .orElse(s.analysis().carbon());
    return m.martensiteGrowth().lengthPct(carbon);
  }
}
