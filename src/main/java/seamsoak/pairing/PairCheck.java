package seamsoak.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import seamsoak.property.Correlations;
import seamsoak.steel.Steel;

/** Whether two steels go together: every check, held against its limits. */
public final class PairCheck {
  private final Correlations k;
  private final PairLimits limits;
  private final List<PairFamily> families;

  public PairCheck(Correlations k, PairLimits limits) {
    this.k = k;
    this.limits = limits;
    Judge judge = new Judge(limits);
    this.families =
        List.of(
            new FireChecks(k, judge),
            new OxideChecks(judge),
            new CriticalChecks(k, judge),
            new HardenabilityChecks(k, judge),
            new ExpansionChecks(k, judge),
            new CarbonChecks(k, judge),
            new ShopChecks(k, judge));
  }

  public PairLimits limits() {
    return limits;
  }

  /** What the checks ask of a steel, worked out once for any number of pairs. */
  public PairSteel steel(Steel steel) {
    return PairSteel.of(k, steel);
  }

  /** The welding heat of a pair: the usual one, or what the more delicate of the two stands. */
  public double weldingCelsius(PairSteel a, PairSteel b, PairSetting s) {
    return s.heat(k.mechanics().welding().usualCelsius(), a, b);
  }

  /** The two under all checks. */
  public PairResult of(PairSteel a, PairSteel b, PairSetting setting) {
    boolean same = a.sameAs(b);
    List<Finding> all = new ArrayList<>();
    for (PairFamily family : families) {
      for (Finding f : family.of(a, b, setting)) {
        all.add(same ? f.alone() : f);
      }
    }
    all.sort(
        Comparator.comparing(Finding::rating).reversed().thenComparingInt(f -> f.limit().order()));
    Rating rating = all.stream().map(Finding::rating).reduce(Rating.FITS, Rating::or);
    return new PairResult(a, b, rating, all, same);
  }
}
