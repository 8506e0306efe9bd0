package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Published;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * A published diffusivity of carbon in one phase of iron. Several compete: side by side they show
 * how far a time to even carbon out can be trusted.
 */
public interface CarbonDiffusivity extends Published {
  /** Diffusivity with the carbon, and as far as the formula knows the alloy, of a steel, m2/s. */
  double squareMetresPerSecond(double kelvin, Composition steel);

  /** The ranges that a steel at a temperature leaves. */
  default List<Exceeded> exceeded(Composition steel, double celsius) {
    return correlation().exceeded(steel, celsius);
  }

  /** Carbon atoms per metal atom, all metal counted as iron, as plain iron-carbon fits have it. */
  static double ratio(Composition steel) {
    return ratio(steel.carbon());
  }

  /** The same of so much carbon, wt%. */
  static double ratio(double carbonPct) {
    return carbonPct / Element.C.mass() / ((100 - carbonPct) / Element.IRON_MASS);
  }
}
