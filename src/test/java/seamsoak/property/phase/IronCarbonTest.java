package seamsoak.property.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.numeric.Roots;
import seamsoak.support.Analyses;

/**
 * Plain iron and carbon: phase equilibria worked out here from the Gibbs energies of each phase,
 * and the fits that the program uses for them.
 */
class IronCarbonTest {
  private static final IronCarbonEquilibria FE_C = new IronCarbonEquilibria(Analyses.CORRELATIONS);
  private static final FeCLines LINES = Analyses.CORRELATIONS.phases().ironCarbon();

  /** The engine's level below A1 leaves out how little carbon changes ferrite's iron. */
  @Test
  void levelOfPearlite() {
    double celsius = 700;
    double ln = FE_C.lnActivityOfPearlite(celsius);
    assertEquals(ln, Unary.lnActivityOfFerriteAndCementite(celsius + 273.15), 0.003);
  }

  @ParameterizedTest
  @CsvSource({"0.02", "0.1", "0.2", "0.4", "0.6", "0.75"})
  void a3FitHoldsItsError(double percent) {
    double celsius = Roots.between(t -> FE_C.besideFerrite(t) - percent, 700, 911, 1e-9);
    assertEquals(celsius, LINES.a3Celsius(percent), 0.4);
    assertEquals(percent, LINES.a3CarbonPct(LINES.a3Celsius(percent), 0), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0.77", "0.84", "0.95", "1.0", "1.2", "1.5", "1.9"})
  void accmFitHoldsItsError(double percent) {
    double celsius = Roots.between(t -> FE_C.besideCementite(t) - percent, 700, 1200, 1e-9);
    assertEquals(celsius, LINES.accmCelsius(percent), accmError(percent));
  }

  /**
   * The fit's own 0.25 C, and 0.002 wt% between Gustafson's cementite, which was fitted, and
   * Hallstedt's, which {@link Unary} has.
   */
  private static double accmError(double percent) {
    double slope = 50 * (LINES.accmCelsius(percent + 0.01) - LINES.accmCelsius(percent - 0.01));
    return 0.25 + 0.002 * slope;
  }
}
