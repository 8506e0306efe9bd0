package seamsoak.carbon;

import java.util.OptionalDouble;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Correlations;
import seamsoak.property.phase.MetalLattice;
import seamsoak.steel.Composition;
import seamsoak.unit.Temperature;

/**
 * A metal that strips are made of.
 *
 * @param name as answers show it
 * @param law how carbon behaves in it
 * @param lattice turns carbon per metal atom into weight percent
 * @param startRatio carbon per metal atom that it came with
 */
public record Metal(String name, CarbonLaw law, MetalLattice lattice, double startRatio) {
  private static final int SIMPSON_PARTS = 10;

  /**
   * A steel with the carbon of its analysis; its mobility multiplied by a factor, 1 as published.
   */
  public static Metal of(
      Correlations correlations, String name, Composition analysis, double mobilityFactor) {
    CarbonInSteel law = new CarbonInSteel(correlations, analysis, mobilityFactor);
    return new Metal(name, law, law.lattice(), law.lattice().ratio(analysis.carbon()));
  }

  /** D t of carbon at the carbon it came with, over a curve, m2. */
  public double diffused(HeatCurve curve) {
    double sum = 0;
    for (HeatCurve.Segment s : curve.segments()) {
      int parts = s.fromKelvin() == s.toKelvin() ? 1 : SIMPSON_PARTS;
      double h = s.seconds() / parts;
      for (int i = 0; i < parts; i++) {
        sum +=
            h
                / 6
                * (diffusivity(s.kelvinAt(i * h))
                    + 4 * diffusivity(s.kelvinAt((i + 0.5) * h))
                    + diffusivity(s.kelvinAt((i + 1) * h)));
      }
    }
    return sum;
  }

  private double diffusivity(double kelvin) {
    return law.at(kelvin).potentialSlope(startRatio);
  }

  /**
   * The most of its carbon that is in solution at a temperature, wt%, for austenitic stainless
   * steel: the rest is chromium carbide. Empty for all others.
   */
  public OptionalDouble mostDissolvedPct(double kelvin) {
    double celsius = kelvin - Temperature.ZERO_CELSIUS;
    return law.phases()
        .map(lines -> lines.besideChromiumCarbidePct(celsius))
        .orElse(OptionalDouble.empty());
  }

  /** Weight percent of carbon for a ratio. */
  public double percent(double ratio) {
    return lattice.percent(ratio);
  }
}
