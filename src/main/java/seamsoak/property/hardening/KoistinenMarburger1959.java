package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Share of austenite that a quench leaves, at one rate for every steel.
 *
 * <p>f = exp(-0.011 (Ms - Tq)) below Ms, 1 above it; Ms and Tq in C
 *
 * <p>D.P. Koistinen, R.E. Marburger, Acta Metall. 7 (1959) 59; form and rate read second-hand.
 *
 * <p>Range: iron and carbon, 0.37 to 1.1 %C, to some -80 C. Stated error: not at hand.
 */
public final class KoistinenMarburger1959 extends PublishedFormula {
  KoistinenMarburger1959(Coefficients k) {
    super(k, "retained austenite", "1", List.of(Correlation.range(C, 0.37, 1.1)), "not at hand");
  }

  /** Share of retained austenite after a quench to {@code quenchCelsius}. */
  public double retained(double msCelsius, double quenchCelsius) {
    return Math.exp(-k.get("rate") * Math.max(0, msCelsius - quenchCelsius));
  }
}
