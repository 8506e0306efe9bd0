package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Diffusivity of carbon in austenite from a newer assessment of its mobility.
 *
 * <pre>
 * RT ln(RT M) = y(-103452.18 - 81.33 T) + (1-y)(-148123.29 - 88.33 T)
 *               + y(1-y)[194029.43 - 17.15 T + 47981.91 (2y-1)]
 * D = RT M [1 + y(1-y) 8339.9/T]
 * </pre>
 *
 * <p>RT M and D in m2/s, T in K, y carbon per iron atom, energies in J/mol. The thermodynamic
 * factor is that of Gustafson's austenite ({@link Agren1986Diffusivity}).
 *
 * <p>Liu et al., Calphad 33 (2009) 614-623.
 *
 * <p>Range: the austenite field of iron and carbon, here as up to 2.1 wt% and 700 to 1400 C.
 *
 * <p>Stated error: not at hand.
 */
public final class Liu2009Diffusivity extends PublishedFormula implements CarbonDiffusivity {
  private static final double R = 8.314463;

  public Liu2009Diffusivity(Coefficients k) {
    super(
        k,
        "diffusivity of carbon in austenite",
        "m2/s",
        List.of(Correlation.range(Element.C, 0, 2.1), Correlation.celsiusRange(700, 1400)),
        "not at hand");
  }

  /** RT M, m2/s, to set beside {@link Agren1986Mobility}. */
  public double mobility(double kelvin, double y) {
    double filled = k.get("filled") + k.get("filled T") * kelvin;
    double empty = k.get("empty") + k.get("empty T") * kelvin;
    double mixed = k.get("mixed") + k.get("mixed T") * kelvin + k.get("mixed 1") * (2 * y - 1);
    return Math.exp((y * filled + (1 - y) * empty + y * (1 - y) * mixed) / (R * kelvin));
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    double y = CarbonDiffusivity.ratio(steel);
    return mobility(kelvin, y) * (1 + y * (1 - y) * k.get("interaction") / kelvin);
  }
}
