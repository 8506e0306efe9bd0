package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.unit.Temperature;

/**
 * Vanadium and carbon in solution beside vanadium carbide.
 *
 * <p>log10([V] [C]) = 6.72 - 9500 / T
 *
 * <p>[V], [C] in wt% dissolved in austenite, T in K. The carbide is taken as VC, so that what is
 * bound takes 12.011 / 50.942 of its weight in carbon.
 *
 * <p>K. Narita, Trans. ISIJ 15 (1975) 145; from memory, as it goes through the textbooks of
 * micro-alloyed steel. A copy in open code has 4.5724 - 5474 / T, with which vanadium would all be
 * in solution at every hardening heat, which the fine grain of such steels speaks against.
 *
 * <p>Range: 750 to 1250 C, judgement. The product was measured on steels of less carbon than blades
 * have; nitrogen, which binds some vanadium more firmly, is left out.
 *
 * <p>Stated error: none at hand.
 */
public final class Narita1975VanadiumCarbide extends PublishedFormula {
  private static final double CARBON_PER_VANADIUM = 12.011 / 50.942;

  public Narita1975VanadiumCarbide(Coefficients k) {
    super(
        k,
        "vanadium and carbon in solution beside vanadium carbide",
        "wt%^2",
        List.of(Correlation.celsiusRange(750, 1250)),
        "none at hand");
  }

  /** What of a steel's vanadium and carbon is in solution, wt%. */
  public record Dissolved(double vanadiumPct, double carbonPct) {}

  /** The product of both in solution, wt% squared. */
  public double product(double celsius) {
    double kelvin = celsius + Temperature.ZERO_CELSIUS;
    return Math.pow(10, k.get("constant") - k.get("per kelvin") / kelvin);
  }

  /**
   * What is in solution in a steel.
   *
   * @param mostCarbonPct that austenite holds beside cementite; spare carbon stays there
   */
  public Dissolved dissolved(
      double vanadiumPct, double carbonPct, double mostCarbonPct, double celsius) {
    double free = inSolution(vanadiumPct, carbonPct, celsius);
    double carbon = carbonPct - CARBON_PER_VANADIUM * (vanadiumPct - free);
    if (carbon <= mostCarbonPct) {
      return new Dissolved(free, carbon);
    }
    return new Dissolved(Math.min(vanadiumPct, product(celsius) / mostCarbonPct), mostCarbonPct);
  }

  /** Carbon that is in neither solution nor vanadium carbide, wt%. */
  public double cementite(double carbonPct, double vanadiumPct, Dissolved d) {
    return carbonPct - d.carbonPct() - CARBON_PER_VANADIUM * (vanadiumPct - d.vanadiumPct());
  }

  /** The vanadium in solution where there is no cementite: v (C - r (V - v)) is the product. */
  private double inSolution(double vanadiumPct, double carbonPct, double celsius) {
    double product = product(celsius);
    if (vanadiumPct * carbonPct <= product) {
      return vanadiumPct;
    }
    double spare = carbonPct - CARBON_PER_VANADIUM * vanadiumPct;
    double root = Math.sqrt(spare * spare + 4 * CARBON_PER_VANADIUM * product);
    // of the two forms of the root the one that does not subtract like numbers
    return spare > 0 ? 2 * product / (spare + root) : (root - spare) / (2 * CARBON_PER_VANADIUM);
  }
}
