package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * One number for temperature and time of a temper; equal numbers soften alike.
 *
 * <p>P = T (20 + log10 t) / 1000
 *
 * <p>T in K, t in hours: with minutes the 20 would be another number, as one encyclopedia has it
 * wrong.
 *
 * <p>J.H. Hollomon, L.D. Jaffe, Trans. AIME 162 (1945) 223; 20 with hours read in a restatement.
 * The authors give 15 for 0.9 to 1.2 %C (from memory); over the half to eight hours of a temper
 * that moves the answer by a few degrees.
 *
 * <p>Range: tempers of martensite, 100 to 700 C, no secondary hardening.
 *
 * <p>Stated error: none at hand.
 */
public final class HollomonJaffe1945 extends PublishedFormula {

  public HollomonJaffe1945(Coefficients k) {
    super(
        k,
        "tempering parameter",
        "1000 K",
        List.of(Correlation.celsiusRange(100, 700)),
        "none at hand");
  }

  /** The parameter of a temper. */
  public double parameter(double kelvin, double hours) {
    return kelvin * (k.get("constant") + Math.log10(hours)) / 1000;
  }

  /** The temperature in K that gives a parameter in that time. */
  public double kelvin(double parameter, double hours) {
    return 1000 * parameter / (k.get("constant") + Math.log10(hours));
  }

  /** The time in hours that gives a parameter at that temperature. */
  public double hours(double parameter, double kelvin) {
    return Math.pow(10, 1000 * parameter / kelvin - k.get("constant"));
  }

  /** Parameter of one temper after another: the first counts as time at the second's heat. */
  public double after(double firstParameter, double kelvin, double hours) {
    return parameter(kelvin, hours(firstParameter, kelvin) + hours);
  }
}
