package seamsoak.pairing;

import java.util.List;
import seamsoak.property.Correlations;
import seamsoak.steel.TemperatureRange;

/** Forging and welding: whether both can be at one heat, and how near the hotter is to melting. */
record FireChecks(Correlations k, Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    double weld = s.weldingCelsius().orElse(k.mechanics().welding().usualCelsius());
    double forge = common(a.forging(), b.forging());
    return List.of(
        judge.overlap(CheckName.WELDING_WINDOW, a.welding(), b.welding()),
        judge.of(
            CheckName.SOLIDUS_MARGIN,
            a,
            b,
            x -> x.limits().solidusCelsius() - weld,
            new Why.At(weld)),
        judge.overlap(CheckName.FORGING_WINDOW, a.forging(), b.forging()),
        judge.of(
            CheckName.HOT_STRENGTH,
            a,
            b,
            x -> k.mechanics().hotStrength().megapascals(x.analysis(), forge),
            new Why.At(forge)));
  }

  /** The middle of what two ranges share, or of the gap between them. */
  private static double common(TemperatureRange first, TemperatureRange second) {
    return 0.5 * (Math.min(first.highC(), second.highC()) + Math.max(first.lowC(), second.lowC()));
  }
}
