package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Diffusivity of carbon in austenite of iron and carbon: the one that the engine uses, there as a
 * mobility times the thermodynamic factor of the alloyed austenite.
 *
 * <p>D = B [1 + y(1-y) 8339.9/T], B of {@link Agren1986Mobility}
 *
 * <p>D in m2/s, T in K, y carbon per iron atom.
 *
 * <p>J. Agren, Scripta Metall. 20 (1986) 1507-1510.
 *
 * <p>Range: the austenite field of iron and carbon, here as up to 2.1 wt% and 700 to 1400 C.
 *
 * <p>Stated error: not at hand; 10 to 15 % against three other fits at 0.4 to 0.8 wt%.
 */
public final class Agren1986Diffusivity extends PublishedFormula implements CarbonDiffusivity {
  private final Agren1986Mobility mobility;
  private final double interaction = k.get("interaction");

  public Agren1986Diffusivity(Coefficients k) {
    super(
        k,
        "diffusivity of carbon in austenite",
        "m2/s",
        List.of(Correlation.range(Element.C, 0, 2.1), Correlation.celsiusRange(700, 1400)),
        "not at hand; 10 to 15 % against other fits at 0.4 to 0.8 wt%");
    mobility = Agren1986Mobility.of(k);
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    return squareMetresPerSecond(kelvin, steel.carbon());
  }

  /** The same of iron with that much carbon, wt%. */
  public double squareMetresPerSecond(double kelvin, double carbonPct) {
    double y = CarbonDiffusivity.ratio(carbonPct);
    return mobility.squareMetresPerSecond(kelvin, y) * (1 + y * (1 - y) * interaction / kelvin);
  }
}
