package seamsoak.property.etch;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Carbon of austenite beside ferrite, or beside cementite, below A1: the line run on.
 *
 * <p>C = c0 + c1 (T - 700) + c2 (T - 700)^2 + c3 (T - 700)^3
 *
 * <p>C in wt%, T in C less what alloying adds to the line.
 *
 * <p>Fit to the metastable equilibrium computed from P. Gustafson, Scand. J. Metall. 14 (1985) 259.
 * The fits that serve above A1, run on, are 2 C off (cementite) and 0.1 wt% off at 680 C (ferrite).
 *
 * <p>Range: 600 to 727 C. Error of the fit: 4e-5 wt% (cementite), 3e-4 wt% (ferrite).
 */
public final class ExtendedLine extends PublishedFormula {
  private static final double FROM = 700;

  public ExtendedLine(Coefficients k, String gives, String error) {
    super(k, gives, "wt%", List.of(Correlation.celsiusRange(600, 727)), error + ", of the fit");
  }

  /** In iron and carbon, never below nothing. */
  double percent(double celsius) {
    double t = celsius - FROM;
    double bend = k.get("T^2") + t * k.terms().getOrDefault("T^3", 0.0);
    return Math.max(0, k.get("constant") + t * (k.get("T") + t * bend));
  }
}
