package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.Published;
import seamsoak.steel.Element;

/**
 * Mobility of carbon in austenite, as B = RT M with M the atomic mobility.
 *
 * <pre>B = 4.53e-7 exp[-(1/T - 2.221e-4)(17767 - 26436 y)]   m2/s</pre>
 *
 * T kelvin, y carbon per metal atom. In plain Fe-C the diffusivity is B [1 + y(1-y) 8339.9/T],
 * whose bracket is the thermodynamic factor of {@link AusteniteActivity}. Source: J. Agren, Scripta
 * Metall. 20 (1986) 1507-1510. Range: the austenite field of Fe-C. Error: 10 to 15 % against three
 * other published fits at 0.4 to 0.8 wt% C. For alloyed austenite B is used unchanged (it agrees
 * with Darken's Si couple); published effects of Cr on B contradict each other.
 *
 * @param prefactor 4.53e-7 m2/s
 * @param inverseKelvin 2.221e-4 1/K
 * @param activation 17767 K
 * @param activationSlope 26436 K per unit of y
 * @param correlation what it says about itself
 */
public record Agren1986Mobility(
    double prefactor,
    double inverseKelvin,
    double activation,
    double activationSlope,
    Correlation correlation)
    implements Published {
  public static Agren1986Mobility of(Coefficients c) {
    return new Agren1986Mobility(
        c.get("prefactor"),
        c.get("inverse"),
        c.get("activation"),
        c.get("activation_slope"),
        c.describe(
            "mobility of carbon in austenite",
            "m2/s",
            List.of(Correlation.range(Element.C, 0, 2.1), Correlation.celsiusRange(700, 1400)),
            "not at hand; 10 to 15 % against other fits at 0.4 to 0.8 wt%"));
  }

  /** B at y = 0, m2/s. */
  public double dilute(double kelvin) {
    return prefactor * Math.exp(-(1 / kelvin - inverseKelvin) * activation);
  }

  /** k in B = dilute exp(k y). */
  public double exponent(double kelvin) {
    return (1 / kelvin - inverseKelvin) * activationSlope;
  }

  /** B, m2/s. */
  public double squareMetresPerSecond(double kelvin, double y) {
    return dilute(kelvin) * Math.exp(exponent(kelvin) * y);
  }
}
