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
        judge.of(
            CheckName.EXPANSION_COLD,
            a,
            b,
            x -> m.meanCold(x.steel(), x.lines(), STIFF_CELSIUS),
            new Why.Between(ROOM_CELSIUS, STIFF_CELSIUS)));
    all.add(mean(CheckName.EXPANSION_TO_WELD, a, b, ROOM_CELSIUS, heat));
    all.add(mean(CheckName.EXPANSION_GAMMA, a, b, GAMMA_CELSIUS, heat));
    if (a.hardens() || b.hardens()) {
      all.add(judge.of(CheckName.TRANSFORMATION, a, b, this::growth, Why.NUMBERS));
    }
    return all;
  }

  private Finding mean(CheckName check, PairSteel a, PairSteel b, double from, double to) {
    return judge.of(
        check,
        a,
        b,
        x -> 1e6 * (elongation(x, to) - elongation(x, from)) / (to - from),
        new Why.Between(from, to));
  }

  private double elongation(PairSteel s, double celsius) {
    return celsius == ROOM_CELSIUS ? 0 : k.mechanics().elongationHot(s.steel(), s.lines(), celsius);
  }

  private double growth(PairSteel s) {
    if (s.lines().alwaysAustenite()) {
      return 0;
    }
    double carbon =
        s.hardening()
            .map(k.hardening().window()::heatCelsius)
            .map(c -> s.austenite(k, c).carbon())
            .orElse(s.analysis().carbon());
    return k.mechanics().martensiteGrowth().lengthPct(carbon);
  }
}
