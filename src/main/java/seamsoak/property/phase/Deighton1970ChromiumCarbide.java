package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * Carbon that dissolves in austenitic stainless steel beside its chromium carbide M23C6.
 *
 * <p>log10(C) = 7.771 - 6272 / T
 *
 * <p>C in parts per million by weight; T in K.
 *
 * <p>M. Deighton, J. Iron Steel Inst. 208 (1970) 1012, for type 316, from memory; taken for 18-8
 * too, of which 0.06 to 0.07 % dissolve at 1000 C (from memory).
 *
 * <p>Range: 700 to 1150 C, 16 to 20 % chromium, 8 to 14 % nickel, judgement: the paper was not
 * seen. Counted from 12 % chromium on.
 *
 * <p>Stated error: not at hand. It is the least that dissolves: carbide takes chromium out of the
 * metal round it, which then holds more.
 */
public final class Deighton1970ChromiumCarbide extends PublishedFormula {
  private static final double PCT_PER_PPM = 1e-4;

  Deighton1970ChromiumCarbide(Coefficients k) {
    super(
        k,
        "carbon in solution beside chromium carbide in austenitic stainless steel",
        "wt%",
        List.of(
            Correlation.celsiusRange(700, 1150),
            Correlation.range(Element.CR, 16, 20),
            Correlation.range(Element.NI, 8, 14)),
        "not at hand");
  }

  /** Whether a steel that is always austenite has the chromium for it. */
  boolean binds(Composition austenitic) {
    return austenitic.percent(Element.CR) >= k.get("chromium from");
  }

  /** The most that dissolves while the metal has all its chromium, wt%. */
  public double dissolvesPct(double celsius) {
    double kelvin = celsius + Temperature.ZERO_CELSIUS;
    return PCT_PER_PPM * Math.pow(10, k.get("constant") - k.get("per kelvin") / kelvin);
  }
}
