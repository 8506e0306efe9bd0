package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.numeric.Roots;

/**
 * Plain iron and carbon: phase equilibria worked out here from the Gibbs energies of each phase,
 * and the fits that the program uses for them.
 */
class IronCarbonTest {
  private final Correlations correlations = Correlations.load(DataFolder.packed());
  private final IronCarbonEquilibria feC = new IronCarbonEquilibria(correlations);
  private final FeCLines lines = correlations.ironCarbon();

  /** Dinsdale's iron: fcc less bcc, J/mol, magnetism included. The fit's own digits. */
  @ParameterizedTest
  @CsvSource({
    "700, 437.45",
    "727, 337.23",
    "750, 264.37",
    "800, 147.06",
    "850, 66.68",
    "900, 10.42",
    "912, -0.29",
    "950, -28.33",
    "1000, -53.74"
  })
  void ironTransforms(double celsius, double joules) {
    double t = celsius + 273.15;
    assertEquals(joules, Unary.fccIron(t) - Unary.bccIron(t), 1.2);
  }

  @Test
  void ironTurnsAt912() {
    double kelvin = Roots.between(t -> Unary.fccIron(t) - Unary.bccIron(t), 1100, 1250, 1e-9);
    assertEquals(911.7, kelvin - 273.15, 0.1);
  }

  @Test
  void eutectoid() {
    double celsius =
        Roots.between(t -> feC.besideFerrite(t) - feC.besideCementite(t), 700, 760, 1e-9);
    assertEquals(726.5, celsius, 0.1);
    assertEquals(0.762, feC.besideFerrite(celsius), 0.001);
    assertEquals(0.0191, feC.ferriteBesideAustenite(celsius), 0.0002);
    assertEquals(1.233, Math.exp(feC.lnActivity(celsius, 0.762)), 0.004);
  }

  @Test
  void eutectoidAgainstGraphite() {
    double celsius =
        Roots.between(t -> feC.besideFerrite(t) - feC.besideGraphite(t), 700, 800, 1e-9);
    assertEquals(738.0, celsius, 0.1);
    assertEquals(0.681, feC.besideFerrite(celsius), 0.001);
  }

  @ParameterizedTest
  @CsvSource({
    "750, 0.603, 0.0167",
    "775, 0.460, 0.0143",
    "800, 0.341, 0.0120",
    "825, 0.241, 0.0095",
    "850, 0.156, 0.0070",
    "875, 0.084, 0.0042",
    "900, 0.024, 0.0014"
  })
  void austeniteAndFerrite(double celsius, double austenite, double ferrite) {
    assertEquals(austenite, feC.besideFerrite(celsius), 0.001);
    assertEquals(ferrite, feC.ferriteBesideAustenite(celsius), 0.0001);
    assertEquals(celsius, lines.a3Celsius(feC.besideFerrite(celsius)), 0.45);
  }

  @ParameterizedTest
  @CsvSource({
    "727, 0.763, 1.230",
    "800, 0.948, 1.147",
    "900, 1.227, 1.073",
    "1000, 1.535, 1.035",
    "1100, 1.876, 1.028"
  })
  void austeniteAndCementite(double celsius, double percent, double activity) {
    assertEquals(percent, feC.besideCementite(celsius), 0.001);
    double saturated = feC.besideCementite(celsius);
    // 0.001 wt%, the carbon's last digit, is 0.002 in activity
    assertEquals(activity, Math.exp(feC.lnActivity(celsius, saturated)), 0.002);
    assertEquals(celsius, lines.accmCelsius(saturated), accmError(saturated));
  }

  @ParameterizedTest
  @CsvSource({
    "738, 0.681",
    "800, 0.859",
    "900, 1.170",
    "1000, 1.502",
    "1100, 1.844",
    "1150, 2.017"
  })
  void austeniteAndGraphite(double celsius, double percent) {
    assertEquals(percent, feC.besideGraphite(celsius), 0.001);
  }

  /** Neumann's measured saturation of 1965, 3.35e-4 t + 1.61e-6 t^2 - 0.435: independent of all. */
  @ParameterizedTest
  @CsvSource({"738", "800", "900", "1000"})
  void graphiteAsMeasured(double t) {
    assertEquals(3.35e-4 * t + 1.61e-6 * t * t - 0.435, feC.besideGraphite(t), 0.011);
  }

  /** The engine's level below A1 leaves out how little carbon changes ferrite's iron. */
  @Test
  void levelOfPearlite() {
    double celsius = 700;
    double ln = feC.lnActivityOfPearlite(celsius);
    assertEquals(ln, Unary.lnActivityOfFerriteAndCementite(celsius + 273.15), 0.003);
  }

  @ParameterizedTest
  @CsvSource({"0.02", "0.1", "0.2", "0.4", "0.6", "0.75"})
  void a3FitHoldsItsError(double percent) {
    double celsius = Roots.between(t -> feC.besideFerrite(t) - percent, 700, 911, 1e-9);
    assertEquals(celsius, lines.a3Celsius(percent), 0.4);
    assertEquals(percent, lines.a3CarbonPct(lines.a3Celsius(percent), 0), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0.77", "0.84", "0.95", "1.0", "1.2", "1.5", "1.9"})
  void accmFitHoldsItsError(double percent) {
    double celsius = Roots.between(t -> feC.besideCementite(t) - percent, 700, 1200, 1e-9);
    assertEquals(celsius, lines.accmCelsius(percent), accmError(percent));
  }

  /**
   * The fit's own 0.25 C, and 0.002 wt% between Gustafson's cementite, which was fitted, and
   * Hallstedt's, which {@link Unary} has.
   */
  private double accmError(double percent) {
    double slope = 50 * (lines.accmCelsius(percent + 0.01) - lines.accmCelsius(percent - 0.01));
    return 0.25 + 0.002 * slope;
  }
}
