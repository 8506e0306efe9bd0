package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
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
public final class SlyckeEricsson1981Diffusivity implements CarbonDiffusivity {
  private static final double R = 8.314;
  private final double factor;
  private final double entropy;
  private final double crowding;
  private final double activation;
  private final double activationCarbon;
  private final Correlation correlation;

  public SlyckeEricsson1981Diffusivity(Coefficients k) {
    factor = k.get("factor");
    entropy = k.get("entropy x");
    crowding = k.get("crowding x");
    activation = k.get("activation energy");
    activationCarbon = k.get("activation energy x");
    correlation =
        k.describe(
            "diffusivity of carbon in austenite",
            "m2/s",
            List.of(Correlation.range(Element.C, 0, 1.5), Correlation.celsiusRange(800, 1200)),
            "not at hand");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    double y = CarbonDiffusivity.ratio(steel);
    double x = y / (1 + y);
    double energy = activation + activationCarbon * x;
    return factor / (1 + crowding * x) * Math.exp(entropy * x / R - energy / (R * kelvin));
  }
}
