package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;

/**
 * Share of austenite that a quench leaves.
 *
 * <p>f = exp(-0.011 (Ms - Tq)) below Ms, 1 above it
 *
 * <p>f share of the austenite that was there above Ms; Ms and Tq in C.
 *
 * <p>D.P. Koistinen, R.E. Marburger, Acta Metall. 7 (1959) 59; read in secondary copies.
 *
 * <p>Range: plain iron-carbon of 0.37 to 1.1 %C, quenched to -80 C at the lowest.
 *
 * <p>Stated error: not at hand.
 */
public final class KoistinenMarburger1959 {
  private final double ratePerKelvin;
  private final Correlation correlation;

  public KoistinenMarburger1959(Coefficients k) {
    this.ratePerKelvin = k.get("rate");
    this.correlation =
        k.describe(
            "retained austenite",
            "1",
            List.of(Correlation.range(C, 0.37, 1.1), Correlation.celsiusRange(-80, 600)),
            "not at hand");
  }

  /** What the correlation says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Share of retained austenite after a quench to {@code quenchCelsius}. */
  public double retained(double msCelsius, double quenchCelsius) {
    return Math.exp(-ratePerKelvin * Math.max(0, msCelsius - quenchCelsius));
  }
}
