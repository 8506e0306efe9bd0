package seamsoak.property.etch;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * When pearlite, or ferrite, starts in austenite that falls below its line: when one percent has
 * formed.
 *
 * <p>1/tau = 2^(n G) dT^3 exp(-Q / (R T)) / (F S), F = exp(c0 + sum of c C, Mn, Si, Ni, Cr and of
 * Mo or its root); on the way down the sum of dt/tau reaches 1 at the start (Scheil)
 *
 * <p>tau in s, G grain size number, dT in K below Ae1 or the Ae3 of that carbon, T in K, R = 1.987
 * cal/mol/K, elements in wt%, S = integral from 0 to 0.01 of dX / (X^(0.4 (1-X)) (1-X)^(0.4 X)).
 *
 * <p>M.V. Li, D.V. Niebuhr, L.L. Meekisho, D.G. Atteridge, Metall. Mater. Trans. B 29 (1998)
 * 661-672; read second-hand, alike in three public codes. For ferrite these have the activation
 * energy of pearlite; that of Kirkaldy and Venugopalan 1984, from memory, starts it earlier.
 *
 * <p>Range: not at hand; taken as low alloy with 0.1 to 0.8 %C, judgement. Alloying elements are
 * capped at its ends.
 *
 * <p>Stated error: not at hand; the start of ferrite in air is doubtful by 30 K.
 */
public final class LiNiebuhr1998Start extends PublishedFormula {
  private static final double GAS_CONSTANT = 1.987;

  private final double grain = k.get("grain");
  private final double sum = k.get("sum at start");
  private final double activation = k.get("activation energy");

  public LiNiebuhr1998Start(Coefficients k, String gives) {
    super(k, gives, "s", LowAlloy.ranges(0.1, 0.8), "not at hand");
  }

  /** What the sum of {@link #drive} over the seconds comes to at the start. */
  double needed(Composition steel, double carbonPct, double grainNumber) {
    Composition c = LowAlloy.capped(steel);
    double molybdenum = c.percent(Element.MO);
    double sumOfTerms =
        k.get("constant")
            + k.get("C") * carbonPct
            + k.linear(c, Element.MN, Element.SI, Element.NI, Element.CR)
            + (k.terms().containsKey("Mo")
                ? k.get("Mo") * molybdenum
                : k.get("sqrt(Mo)") * Math.sqrt(molybdenum));
    return Math.exp(sumOfTerms) * sum / Math.pow(2, grain * grainNumber);
  }

  /** What a second adds so far below the line, K^3. */
  double drive(double belowKelvin, double celsius) {
    return drive(activation, belowKelvin, celsius);
  }

  /** The same where ferrite starts as early as it may. */
  double earlyDrive(double belowKelvin, double celsius) {
    return drive(k.get("early activation energy"), belowKelvin, celsius);
  }

  private static double drive(double calories, double belowKelvin, double celsius) {
    return belowKelvin <= 0
        ? 0
        : belowKelvin
            * belowKelvin
            * belowKelvin
            * Math.exp(-calories / (GAS_CONSTANT * (celsius + Temperature.ZERO_CELSIUS)));
  }
}
