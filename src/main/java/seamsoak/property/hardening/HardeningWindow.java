package seamsoak.property.hardening;

import java.util.List;
import java.util.Optional;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/**
 * The range to harden a steel from, and the heat in it that all answers take.
 *
 * <p>published for the grade, or else from max(Ac3 + 25 + 30, Ac1 + 70) up to 30 above that; none
 * below 0.3 % carbon and for steel that is austenite throughout. The heat lies 0.4 of the way from
 * the cool end to the hot one, to 5 C.
 *
 * <p>In C, carbon in wt%. Ac3 is that of equilibrium; on heating it comes 15 to 35 C later, the 25.
 *
 * <p>Our judgement: beyond the eutectoid carbide is meant to stay, so Accm plays no part. A
 * published range is for the carbon of its grade: where less is left and Ac3 has risen, its cool
 * end rises to what the rule asks, less what the sheet undercuts the rule by as it stands.
 *
 * <p>Range: plain and low alloy. Stated error: none.
 */
public final class HardeningWindow extends PublishedFormula {
  private static final double STEP = 5;

  HardeningWindow(Coefficients k) {
    super(k, "hardening range where no sheet gives one", "C", List.of(), "none, judgement");
  }

  /** Whether a carbon content is enough to harden. */
  public boolean hardens(double carbonPct) {
    return carbonPct >= k.get("least carbon");
  }

  /** The range of a steel as it was bought; empty for one that does not harden. */
  public Optional<TemperatureRange> of(Steel steel, PhaseLines lines) {
    double carbon = steel.analysis().carbon();
    return lines.alwaysAustenite() || !hardens(carbon)
        ? Optional.empty()
        : Optional.of(of(steel, lines, carbon));
  }

  /** The range with the carbon it has by now, whether that is enough or not. */
  public TemperatureRange of(Steel steel, PhaseLines lines, double carbonPct) {
    double need = need(lines, carbonPct);
    return steel
        .heatTreatment()
        .harden()
        .map(
            sheet -> {
              double under = Math.max(0, need(lines, steel.analysis().carbon()) - sheet.lowC());
              double low = Math.max(sheet.lowC(), need - under);
              return new TemperatureRange(low, Math.max(low, sheet.highC()));
            })
        .orElseGet(() -> new TemperatureRange(need, need + k.get("width")));
  }

  private double need(PhaseLines lines, double carbonPct) {
    return Math.max(
        lines.ac3Celsius(carbonPct) + heatingKelvin() + k.get("above Ac3"),
        lines.a1Celsius() + k.get("above Ac1"));
  }

  /** How much later than at equilibrium the last ferrite goes on heating, K. */
  public double heatingKelvin() {
    return k.get("heating");
  }

  /** How much later it goes at most, K. */
  public double mostHeatingKelvin() {
    return k.get("heating at most");
  }

  /** The heat to harden from in a range. */
  public double heatCelsius(TemperatureRange range) {
    double asked = range.lowC() + k.get("into the range") * (range.highC() - range.lowC());
    return Math.max(range.lowC(), Math.min(range.highC(), STEP * Math.round(asked / STEP)));
  }

  /** The heat for steels hardened together: in what their ranges share, or midway between them. */
  public double heatCelsius(List<TemperatureRange> ranges) {
    double low = ranges.stream().mapToDouble(TemperatureRange::lowC).max().orElseThrow();
    double high = ranges.stream().mapToDouble(TemperatureRange::highC).min().orElseThrow();
    return low <= high ? heatCelsius(new TemperatureRange(low, high)) : 0.5 * (low + high);
  }
}
