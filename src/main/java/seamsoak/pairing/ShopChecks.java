package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import seamsoak.property.Correlations;
import seamsoak.property.etch.Whiteness;
import seamsoak.property.hardening.Hardening;
import seamsoak.steel.Element;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.Steel;

/** Soft layers, residual elements, steels that must not be normalized, and the look. */
record ShopChecks(Correlations k, Judge judge) implements PairFamily {
  /** With more martensite gets no harder, wt%. */
  private static final double MOST_CARBON = 1;

  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    List<Finding> all = new ArrayList<>();
    if (a.hardens() != b.hardens()) {
      all.add(
          judge.of(
              CheckName.SOFT_LAYER,
              a,
              b,
              x -> x.analysis().carbon(),
              new Why.Each(a.hardens(), b.hardens())));
    }
    if (normalizes(a.steel()) != normalizes(b.steel())) {
      all.add(
          judge.of(CheckName.NORMALIZING, a, b, x -> normalizes(x.steel()) ? 0 : 1, Why.NUMBERS));
    }
    judge.content(CheckName.SULFUR, Element.S, a, b).forEach(all::add);
    judge.content(CheckName.COPPER, Element.CU, a, b).forEach(all::add);
    double first = brightness(a);
    double second = brightness(b);
    all.add(judge.values(CheckName.CONTRAST, first, second, contrast(Math.abs(first - second))));
    return all;
  }

  /**
   * By its alloy, and by what its martensite lacks in hardness against that of the most carbon:
   * what counts as strong by one counts as strong by the other.
   */
  private double brightness(PairSteel s) {
    Whiteness whiteness = k.etching().whiteness();
    double softer = whitened(s.analysis().carbon()) - whitened(MOST_CARBON);
    double strong = judge.limits().of(CheckName.CONTRAST_STRONG).watch().orElse(0);
    double carbon = s.lines().alwaysAustenite() ? 0 : strong * softer / whiteness.strong();
    return k.mechanics().brightness().of(s.analysis()) + carbon;
  }

  private double whitened(double carbonPct) {
    Hardening h = k.hardening();
    return k.etching()
        .whiteness()
        .hardened(0, h.conversion().vickers(h.asQuenched().measuredHrc(carbonPct)));
  }

  /** A sheet that tells the hardening range of a steel and no normalizing one warns by silence. */
  private static boolean normalizes(Steel s) {
    HeatTreatment t = s.heatTreatment();
    return t.harden().isEmpty() || t.normalize().isPresent();
  }

  private Why.Contrast contrast(double gap) {
    return gap < judge.limits().of(CheckName.CONTRAST_FAINT).watch().orElse(0)
        ? Why.Contrast.HARDLY_ANY
        : gap < judge.limits().of(CheckName.CONTRAST_STRONG).watch().orElse(0)
            ? Why.Contrast.SOME
            : Why.Contrast.STRONG;
  }
}
