package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Diffusivity of carbon as textbooks print it, the same for every carbon content.
 *
 * <p>D = D0 exp(-Q/(R T))
 *
 * <p>D0 in m2/s, T in K; the table gives Q/R in K, with the energy and the R of the source in its
 * note.
 *
 * <p>Source: the one that the rows of {@code correlations.csv} name.
 *
 * <p>Range: ferrite to 912 C; austenite 800 to 1200 C and up to 1.5 wt%, judgement. In austenite
 * each holds near one carbon content only: 2.3e-5 m2/s with 148 kJ/mol is the limit of no carbon,
 * the others are near 0.4 to 0.8 wt%.
 *
 * <p>Stated error: none.
 */
public final class ConstantDiffusivity extends PublishedFormula implements CarbonDiffusivity {

  private ConstantDiffusivity(Coefficients k, String phase, List<Range> ranges) {
    super(k, "diffusivity of carbon in " + phase, "m2/s", ranges, "none");
  }

  public static ConstantDiffusivity inAustenite(Coefficients k) {
    return new ConstantDiffusivity(
        k,
        "austenite",
        List.of(Correlation.range(Element.C, 0, 1.5), Correlation.celsiusRange(800, 1200)));
  }

  public static ConstantDiffusivity inFerrite(Coefficients k) {
    return new ConstantDiffusivity(k, "ferrite", List.of(Correlation.celsiusRange(-40, 912)));
  }

  @Override
  public double squareMetresPerSecond(double kelvin, Composition steel) {
    return k.get("factor") * Math.exp(-k.get("activation temperature") / kelvin);
  }
}
