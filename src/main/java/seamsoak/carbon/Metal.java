package seamsoak.carbon;

import seamsoak.property.Correlations;
import seamsoak.property.MetalLattice;
import seamsoak.steel.Composition;

/**
 * A metal that strips are made of.
 *
 * @param name as answers show it
 * @param law how carbon behaves in it
 * @param lattice turns carbon per metal atom into weight percent
 * @param startRatio carbon per metal atom that it came with
 */
public record Metal(String name, CarbonLaw law, MetalLattice lattice, double startRatio) {
  /**
   * A steel with the carbon of its analysis; its mobility multiplied by a factor, 1 as published.
   */
  public static Metal of(
      Correlations correlations, String name, Composition analysis, double mobilityFactor) {
    CarbonInSteel law = new CarbonInSteel(correlations, analysis, mobilityFactor);
    return new Metal(name, law, law.lattice(), law.lattice().ratio(analysis.carbon()));
  }

  /** Weight percent of carbon for a ratio. */
  public double percent(double ratio) {
    return lattice.percent(ratio);
  }
}
