package seamsoak.property.forging;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.V;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * What hot steel withstands under a blow.
 *
 * <p>s = 9.81 exp(0.126 - 1.75 C + 0.594 C^2 + (2851 + 2968 C - 1120 C^2) / T) e^0.21 r^0.13 f; f =
 * 0.916 + 0.18 Mn + 0.389 V + 0.191 Mo + 0.004 Ni + 0.045 Cr
 *
 * <p>s in MPa, C and elements in wt%, T in K, e the strain, r its rate in 1/s.
 *
 * <p>Y. Misaka, T. Yoshimoto, J. Jpn. Soc. Technol. Plast. 8 (1967) 414, and its extension to low
 * alloy steel; all from memory. The term of chromium is our judgement: at 1100 C stainless and die
 * steels withstand about one and a half to twice what carbon steel does.
 *
 * <p>Range: up to 1.2 %C, 750 to 1200 C, strain to 0.5, 30 to 200 per second. A press is slower;
 * ratios of two steels do not depend on it. Carbon is capped at 1.2 %; elements at the ends of
 * {@link LowAlloy}, chromium excepted.
 *
 * <p>Stated error: not at hand.
 */
public final class MisakaYoshimoto1967HotStrength extends PublishedFormula {
  private static final double MEGAPASCALS = 9.80665;
  private static final double STRAIN = 0.3;
  private static final double RATE_PER_SECOND = 3;
  private static final double MOST_CARBON = 1.2;

  MisakaYoshimoto1967HotStrength(Coefficients k) {
    super(
        k,
        "hot strength",
        "MPa",
        List.of(
            Correlation.range(Element.C, 0, MOST_CARBON),
            Correlation.range(CR, 0, 5),
            Correlation.range(NI, 0, 5),
            Correlation.celsiusRange(750, 1200)),
        "not at hand");
  }

  /** Resistance of a piece pressed by about a quarter of its height in a tenth of a second, MPa. */
  public double megapascals(Composition steel, double celsius) {
    double c = Math.min(MOST_CARBON, steel.carbon());
    double kelvin = celsius - CriticalTemperature.ABSOLUTE_ZERO;
    double exponent =
        k.get("constant")
            + c * (k.get("C") + c * k.get("C^2"))
            + (k.get("inverse") + c * (k.get("inverse C") + c * k.get("inverse C^2"))) / kelvin;
    return MEGAPASCALS
        * Math.exp(exponent)
        * Math.pow(STRAIN, k.get("strain exponent"))
        * Math.pow(RATE_PER_SECOND, k.get("rate exponent"))
        * alloyFactor(steel);
  }

  private double alloyFactor(Composition steel) {
    return k.get("alloy constant")
        + k.linear(LowAlloy.capped(steel), MN, V, MO, NI)
        + k.linear(steel, CR);
  }
}
