package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;

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
public final class Canale2008Ramp {
  private final Coefficients k;
  private final Correlation correlation;

  public Canale2008Ramp(Coefficients k) {
    this.k = k;
    this.correlation =
        k.describe(
            "tempering time of a climb",
            "h",
            List.of(Correlation.celsiusRange(100, 700)),
            "none stated");
  }

  /** What the formula says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Hours at the final heat. */
  public double hours(double finalKelvin, double kelvinPerHour) {
    return finalKelvin
        / (k.get("natural") * kelvinPerHour * (k.get("constant") - Math.log10(kelvinPerHour)));
  }
}
