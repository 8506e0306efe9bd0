package seamsoak.property.section;

import java.util.Arrays;
import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Heat and expansion of carbon steel.
 *
 * <p>Specific heat c: 425 + 0.773 T - 1.69e-3 T^2 + 2.22e-6 T^3 (20 to 600); 666 + 13002 / (738 -
 * T) (to 735); 545 + 17820 / (T - 731) (to 900); 650 above. Conductivity: 54 - 0.0333 T (to 800),
 * 27.3 above. Elongation: 1.2e-5 T + 0.4e-8 T^2 - 2.416e-4 (to 750); 0.011 (to 860); 2e-5 T -
 * 6.2e-3 above. Density 7850 throughout.
 *
 * <p>T in C, c in J/kg/K, conductivity in W/m/K, elongation per length at 20 C, density in kg/m3.
 *
 * <p>EN 1993-1-2; read in a restatement, the form of the two fractions from memory.
 *
 * <p>Range: 20 to 1200 C; level or straight on beyond. The peak of c stands for heating: on cooling
 * the arrest comes at Ar1, and expansion above 860 C is too small for work that needs dimensions.
 *
 * <p>Stated error: none, values for design.
 */
public final class En1993Steel extends PublishedFormula {
  private final double[] cubic = piece("c 20-600", "constant", "linear", "square", "cube");
  private final double[] below735 = piece("c 600-735", "constant", "numerator", "pole");
  private final double[] below900 = piece("c 735-900", "constant", "numerator", "pole");
  private final double above900 = k.get("c above 900");

  public En1993Steel(Coefficients k) {
    super(
        k,
        "heat and expansion of steel",
        "various",
        List.of(Correlation.celsiusRange(20, 1200)),
        "none stated");
  }

  private double[] piece(String piece, String... terms) {
    return Arrays.stream(terms).mapToDouble(term -> k.get(piece + " " + term)).toArray();
  }

  /** Heat held above 0 C, J/kg: the integral of the specific heat. */
  public double heatContent(double celsius) {
    double cool = Math.min(celsius, 600);
    double sum =
        cool * (cubic[0] + cool * (cubic[1] / 2 + cool * (cubic[2] / 3 + cool * cubic[3] / 4)));
    if (celsius > 600) {
      double end = Math.min(celsius, 735);
      sum +=
          below735[0] * (end - 600)
              + below735[1] * Math.log((below735[2] - 600) / (below735[2] - end));
    }
    if (celsius > 735) {
      double end = Math.min(celsius, 900);
      sum +=
          below900[0] * (end - 735)
              + below900[1] * Math.log((end - below900[2]) / (735 - below900[2]));
    }
    return sum + above900 * Math.max(0, celsius - 900);
  }

  /** Thermal conductivity, W/m/K. */
  public double conductivity(double celsius) {
    return celsius < 800
        ? k.get("conductivity at zero") + k.get("conductivity slope") * celsius
        : k.get("conductivity above 800");
  }

  /** Elongation per length at 20 C. */
  public double elongation(double celsius) {
    if (celsius < 750) {
      return k.get("elongation to 750 constant")
          + celsius
              * (k.get("elongation to 750 linear") + k.get("elongation to 750 square") * celsius);
    }
    if (celsius <= 860) {
      return k.get("elongation 750-860");
    }
    return k.get("elongation above 860 constant") + k.get("elongation above 860 linear") * celsius;
  }

  /** Density, kg/m3. */
  public double density() {
    return k.get("density");
  }
}
