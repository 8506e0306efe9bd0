package seamsoak.property.hardening;

import java.util.List;
import java.util.Optional;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/**
 * The range to harden a steel from.
 *
 * <p>published for the grade, or else from max(Ac3 + 30, Ac1 + 50) up to 30 above that; none below
 * 0.3 % carbon and for steel that is austenite throughout
 *
 * <p>In C, carbon in wt%.
 *
 * <p>Our judgement: beyond the eutectoid carbide is meant to stay, so Accm plays no part. Near the
 * eutectoid it begins some 30 C below the ranges published for plain steel.
 *
 * <p>Range: plain and low alloy. Stated error: none.
 */
public final class HardeningRule {
  private final Coefficients k;
  private final Correlation correlation;

  HardeningRule(Coefficients k) {
    this.k = k;
    this.correlation =
        k.describe("hardening range where no sheet gives one", "C", List.of(), "none, judgement");
  }

  /** What the rule says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Whether a carbon content is enough to harden. */
  public boolean hardens(double carbonPct) {
    return carbonPct >= k.get("least carbon");
  }

  /** The range; empty for a steel that does not harden. */
  public Optional<TemperatureRange> of(Steel steel, PhaseLines lines) {
    if (lines.alwaysAustenite() || !hardens(steel.analysis().carbon())) {
      return Optional.empty();
    }
    return steel.heatTreatment().harden().or(() -> Optional.of(reckoned(steel, lines)));
  }

  private TemperatureRange reckoned(Steel steel, PhaseLines lines) {
    double low =
        Math.max(
            lines.ac3Celsius(steel.analysis().carbon()) + k.get("above Ac3"),
            lines.a1Celsius() + k.get("above Ac1"));
    return new TemperatureRange(low, low + k.get("width"));
  }
}
