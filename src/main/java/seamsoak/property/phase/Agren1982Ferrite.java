package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;

/**
 * Diffusivity of carbon in ferrite.
 *
 * <pre>D = 2e-6 exp(-10115/T) exp{0.5898 [1 + (2/pi) arctan(1.4985 - 15309/T)]}   m2/s</pre>
 *
 * T kelvin. Source: J. Agren, J. Phys. Chem. Solids 43 (1982) 421-430. Range: -40 to 912 C. Error:
 * within 3 % of Wert (1950) from 500 to 912 C; textbook pairs lie two to three times lower above
 * 700 C, so the band is half to once the value.
 */
public final class Agren1982Ferrite extends PublishedFormula implements CarbonDiffusivity {
  private final double prefactor = k.get("prefactor");
  private final double activation = k.get("activation");
  private final double bend = k.get("bend");
  private final double bendOffset = k.get("bend_offset");
  private final double bendActivation = k.get("bend_activation");

  public Agren1982Ferrite(Coefficients k) {
    super(
        k,
        "diffusivity of carbon in ferrite",
        "m2/s",
        List.of(Correlation.celsiusRange(-40, 912)),
        "not at hand; textbook pairs lie two to three times lower above 700 C");
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    return squareMetresPerSecond(kelvin);
  }

  /** D, m2/s. */
  public double squareMetresPerSecond(double kelvin) {
    return prefactor
        * Math.exp(-activation / kelvin)
        * Math.exp(bend * (1 + 2 / Math.PI * Math.atan(bendOffset - bendActivation / kelvin)));
  }
}
