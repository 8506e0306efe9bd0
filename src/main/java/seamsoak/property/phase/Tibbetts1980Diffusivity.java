package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Diffusivity of carbon in austenite.
 *
 * <p>D = 0.47 exp[-1.6 C - (37000 - 6600 C)/(R T)]
 *
 * <p>D in cm2/s, C in wt%, T in K, R = 1.987 cal/mol/K.
 *
 * <p>G.G. Tibbetts, J. Appl. Phys. 51 (1980) 4813; the numbers were read, that they are his is from
 * memory.
 *
 * <p>Range: 0.1 to 1.3 wt%, 800 to 1100 C, judgement: gas carburizing.
 *
 * <p>Stated error: not at hand.
 */
public final class Tibbetts1980Diffusivity extends PublishedFormula implements CarbonDiffusivity {
  private static final double CALORIES = 1.987;

  public Tibbetts1980Diffusivity(Coefficients k) {
    super(
        k,
        "diffusivity of carbon in austenite",
        "m2/s",
        List.of(Correlation.range(Element.C, 0.1, 1.3), Correlation.celsiusRange(800, 1100)),
        "not at hand");
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    double c = steel.carbon();
    double energy = k.get("activation energy") + k.get("activation energy C") * c;
    return 1e-4 * k.get("factor") * Math.exp(k.get("C") * c - energy / (CALORIES * kelvin));
  }
}
