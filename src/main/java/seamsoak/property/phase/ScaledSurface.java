package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.Published;
import seamsoak.unit.Temperature;

/**
 * Activity of carbon at a steel surface under iron scale: FeO + C = Fe + CO.
 *
 * <pre>ln a = ln pCO - 18.360 + 18243.8/T</pre>
 *
 * T kelvin, pCO atm. Sources: the Fe-wustite oxygen potential of H.St.C. O'Neill and M.I. Pownceby,
 * Contrib. Mineral. Petrol. 114 (1993) 296, with the energy of C + 1/2 O2 = CO as a line through
 * table values (from memory). Range: 1000 to 1523 K. Error: 8 % in activity at 1000 C, and pCO can
 * lie below 1 atm; above 1000 C the depth of the skin hardly depends on it.
 */
public record ScaledSurface(double constant, double inverseT, Correlation correlation)
    implements Published {
  public static ScaledSurface of(Coefficients c) {
    return new ScaledSurface(
        c.get("constant"),
        c.get("inverse_T"),
        c.describe(
            "activity of carbon at a face under scale",
            "1",
            List.of(
                Correlation.celsiusRange(
                    1000 - Temperature.ZERO_CELSIUS, 1523 - Temperature.ZERO_CELSIUS)),
            "8 % in activity at 1000 C"));
  }

  /** ln of the activity. */
  public double lnActivity(double kelvin, double carbonMonoxideAtm) {
    return Math.log(carbonMonoxideAtm) + constant + inverseT / kelvin;
  }
}
