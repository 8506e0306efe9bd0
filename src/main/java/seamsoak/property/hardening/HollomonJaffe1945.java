package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;
import seamsoak.steel.Element;

/**
 * One number for temperature and time of a temper; equal numbers soften alike.
 *
 * <p>P = T (20 + log10 t) / 1000
 *
 * <p>T in K, t in hours: with minutes the 20 would be another number, as one encyclopedia has it
 * wrong.
 *
 * <p>J.H. Hollomon, L.D. Jaffe, Trans. AIME 162 (1945) 223; 20 with hours read in a restatement.
 * The authors' own number falls with carbon, 21.53 - 5.8 C (from memory): 15 to 16 for 0.9 to 1.1
 * %C. Over the half to eight hours of a temper that moves the answer by a few degrees, over seconds
 * or days by more ({@link #ofCarbon}).
 *
 * <p>Range: tempers of martensite, 100 to 700 C, no secondary hardening.
 *
 * <p>Stated error: none at hand.
 */
public final class HollomonJaffe1945 extends PublishedFormula {

  private static final Range CARBON = Correlation.range(Element.C, 0.15, 1.2);

  private final double constant;

  public HollomonJaffe1945(Coefficients k) {
    this(k, k.get("constant"));
  }

  private HollomonJaffe1945(Coefficients k, double constant) {
    super(
        k,
        "tempering parameter",
        "1000 K",
        List.of(Correlation.celsiusRange(100, 700)),
        "none at hand");
    this.constant = constant;
  }

  /**
   * The same with the constant of so much carbon, from 0.15 to 1.2 %, and that of the ends beyond.
   */
  public HollomonJaffe1945 ofCarbon(double carbonPct) {
    double carbon = Math.min(CARBON.high(), Math.max(CARBON.low(), carbonPct));
    return new HollomonJaffe1945(
        k, k.get("constant without carbon") + k.get("constant per C") * carbon);
  }

  /** The parameter of a temper. */
  public double parameter(double kelvin, double hours) {
    return kelvin * (constant + Math.log10(hours)) / 1000;
  }

  /** The temperature in K that gives a parameter in that time. */
  public double kelvin(double parameter, double hours) {
    return 1000 * parameter / (constant + Math.log10(hours));
  }

  /** The time in hours that gives a parameter at that temperature. */
  public double hours(double parameter, double kelvin) {
    return Math.pow(10, 1000 * parameter / kelvin - constant);
  }

  /** Parameter of one temper after another: the first counts as time at the second's heat. */
  public double after(double firstParameter, double kelvin, double hours) {
    return parameter(kelvin, hours(firstParameter, kelvin) + hours);
  }
}
