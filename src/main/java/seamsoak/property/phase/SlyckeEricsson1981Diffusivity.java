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
 * <p>D = 4.84e-5 exp(-320 x/R) / (1 - 5x) exp[-(155000 - 570000 x)/(R T)]
 *
 * <p>D in m2/s, x mole fraction of carbon, T in K, energies in J/mol, R = 8.314 J/mol/K.
 *
 * <p>J. Slycke, T. Ericsson, J. Heat Treating 2 (1981) 3 and 97; numbers read, pages from memory.
 *
 * <p>Range: up to 1.5 wt%, 800 to 1200 C, judgement.
 *
 * <p>Stated error: not at hand.
 */
public final class SlyckeEricsson1981Diffusivity extends PublishedFormula
    implements CarbonDiffusivity {
  private static final double R = 8.314;

  public SlyckeEricsson1981Diffusivity(Coefficients k) {
    super(
        k,
        "diffusivity of carbon in austenite",
        "m2/s",
        List.of(Correlation.range(Element.C, 0, 1.5), Correlation.celsiusRange(800, 1200)),
        "not at hand");
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    double y = CarbonDiffusivity.ratio(steel);
    double x = y / (1 + y);
    double energy = k.get("activation energy") + k.get("activation energy x") * x;
    return k.get("factor")
        / (1 + k.get("crowding x") * x)
        * Math.exp(k.get("entropy x") * x / R - energy / (R * kelvin));
  }
}
