package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Time at the final heat that a steady climb to it is worth in tempering.
 *
 * <p>t = T / (2.3 r (20 - log10 r))
 *
 * <p>t in hours, T in K at the end of the climb, r in K per hour.
 *
 * <p>L.C.F. Canale, X. Yao, J. Gu, G.E. Totten, Int. J. Microstruct. Mater. Prop. 3 (2008) 474.
 *
 * <p>Range: as {@link HollomonJaffe1945}, whose constant 20 it uses.
 *
 * <p>Stated error: none in the copy.
 */
public final class Canale2008Ramp extends PublishedFormula {

  public Canale2008Ramp(Coefficients k) {
    super(
        k,
        "tempering time of a climb",
        "h",
        List.of(Correlation.celsiusRange(100, 700)),
        "none stated");
  }

  /** Hours at the final heat. */
  public double hours(double finalKelvin, double kelvinPerHour) {
    return finalKelvin
        / (k.get("natural") * kelvinPerHour * (k.get("constant") - Math.log10(kelvinPerHour)));
  }
}
