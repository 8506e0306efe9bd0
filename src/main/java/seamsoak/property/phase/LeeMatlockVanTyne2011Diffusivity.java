package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Diffusivity of carbon in austenite of alloyed steel.
 *
 * <pre>
 * D = [0.146 - 0.036 C (1 - 1.075 Cr) + sum k1 M] exp[-(144.3 - 15.0 C + 0.37 C^2 + sum k2 M)/(R T)]
 * k1: Mn -0.0315, Si 0.0509, Ni -0.0085, Mo 0.3031, Al -0.0520
 * k2: Mn -4.3663, Si 4.0507, Ni -1.2407, Cr 7.7260, Mo 12.1266, Al -6.7886
 * </pre>
 *
 * <p>D in cm2/s, C and M in wt%, energies in kJ/mol, T in K, R = 8.314 J/mol/K.
 *
 * <p>S.-J. Lee, D.K. Matlock, C.J. Van Tyne, ISIJ Int. 51 (2011) 1903-1911.
 *
 * <p>Range: up to 1.5 wt% C, 2 % Mn, 2 % Si, 4 % Ni, 1.1 % Cr, 0.6 % Mo, 800 to 1200 C, judgement.
 * Chromium slows it by half for each percent, which other sources contradict: a range wide enough
 * for 1.5 % would give nonsense at 5 %. Beyond the limits of {@link LowAlloy} it counts them at
 * these, since it would turn negative in nickel.
 *
 * <p>Stated error: not at hand.
 */
public final class LeeMatlockVanTyne2011Diffusivity extends PublishedFormula
    implements CarbonDiffusivity {
  private static final Element[] ALLOYING = {
    Element.MN, Element.SI, Element.NI, Element.MO, Element.AL
  };
  private static final double R = 8.314;

  public LeeMatlockVanTyne2011Diffusivity(Coefficients k) {
    super(
        k,
        "diffusivity of carbon in austenite",
        "m2/s",
        List.of(
            Correlation.range(Element.C, 0, 1.5),
            Correlation.range(Element.MN, 0, 2),
            Correlation.range(Element.SI, 0, 2),
            Correlation.range(Element.NI, 0, 4),
            Correlation.range(Element.CR, 0, 1.1),
            Correlation.range(Element.MO, 0, 0.6),
            Correlation.celsiusRange(800, 1200)),
        "not at hand");
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition of) {
    Composition steel = LowAlloy.capped(of);
    double c = steel.carbon();
    double factor = k.get("factor") + c * (k.get("C") + k.get("C*Cr") * steel.percent(Element.CR));
    double kilojoules =
        k.get("activation energy")
            + c * (k.get("energy C") + k.get("energy C^2") * c)
            + k.get("energy Cr") * steel.percent(Element.CR);
    for (Element e : ALLOYING) {
      factor += k.get(e.symbol()) * steel.percent(e);
      kilojoules += k.get("energy " + e.symbol()) * steel.percent(e);
    }
    return 1e-4 * factor * Math.exp(-1e3 * kilojoules / (R * kelvin));
  }
}
