package seamsoak.property.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.Element;
import seamsoak.support.Analyses;

/** The lines of plain iron and carbon, and those of steels made from them. */
class PhaseLinesTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private final FeCLines plain = k.phases().ironCarbon();

  private PhaseLines of(String analysis) {
    return k.lines(Analyses.of(analysis));
  }

  /** The two polynomials by hand, C. */
  @ParameterizedTest
  @CsvSource({"0, 910.697, 374.357", "0.5, 767.690, 881.932", "0.8, 725.692, 742.650"})
  void polynomials(double percent, double a3, double accm) {
    double c = percent;
    double four = 910.697 - 467.002 * c + 575.187 * c * c - 541.311 * c * c * c;
    assertEquals(four + 229.808 * c * c * c * c, plain.a3Celsius(c), 1e-9);
    double three = 374.357 + 530.616 * c - 96.143 * c * c;
    assertEquals(three + 10.424 * c * c * c, plain.accmCelsius(c), 1e-9);
  }

  /** From 0.85 % the A3 line goes on as its tangent, and turns round there too. */
  @Test
  void a3GoesOnStraight() {
    double slope = (plain.a3Celsius(0.85) - plain.a3Celsius(0.85 - 1e-6)) / 1e-6;
    assertEquals(plain.a3Celsius(0.85) + 0.5 * slope, plain.a3Celsius(1.35), 1e-3);
    assertEquals(slope, plain.a3Celsius(2) - plain.a3Celsius(1), 1e-3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.02, 0.3, 0.7, 0.84, 0.86, 1.5, 3})
  void a3TurnsRound(double percent) {
    for (double shift : new double[] {-40, 0, 60}) {
      double celsius = plain.a3Celsius(percent) + shift;
      assertEquals(percent, plain.a3CarbonPct(celsius, shift), 1e-9);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.3, 0.76, 1, 2, 5, 6.59})
  void accmTurnsRound(double percent) {
    for (double shift : new double[] {-40, 0, 60}) {
      double celsius = plain.accmCelsius(percent) + shift + 20 * percent;
      assertEquals(percent, plain.accmCarbonPct(celsius, shift, 20), 1e-9);
    }
  }

  @Test
  void theLinesEnd() {
    assertEquals(0, plain.a3CarbonPct(910.7, 0));
    assertEquals(0, plain.a3CarbonPct(950.7, 40));
    assertTrue(plain.a3CarbonPct(950.6, 40) > 0);
    assertEquals(6.6, plain.a3CarbonPct(-2000, 0));
    assertEquals(0, plain.accmCarbonPct(374.3, 0, 0));
    assertEquals(0, plain.accmCarbonPct(384.3, 10, 5));
    assertTrue(plain.accmCarbonPct(384.4, 10, 5) > 0);
    assertEquals(6.6, plain.accmCarbonPct(plain.accmCelsius(6.6) + 10 + 33.1, 10, 5));
    assertTrue(plain.accmCarbonPct(plain.accmCelsius(6.6) + 10 + 32.9, 10, 5) < 6.6);
  }

  /** A silicon steel: iron-carbon lines plus the alloy terms, added by hand. */
  @Test
  void linesOfASteel() {
    PhaseLines steel = of("C0.6 Mn0.88 Si2.0");
    double a3Shift = 44.7 * 2 - 30 * 0.88;
    assertEquals(plain.a3Celsius(0.3) + a3Shift, steel.ac3Celsius(0.3), 1e-9);
    double accmShift = 7.6 * 0.88 + 16.7 * 2;
    assertEquals(plain.accmCelsius(1.2) + accmShift, steel.accmCelsius(1.2), 1e-9);
    assertEquals(0.3, steel.austeniteBesideFerritePct(steel.ac3Celsius(0.3)), 1e-9);
    assertEquals(1.2, steel.austeniteBesideCementitePct(steel.accmCelsius(1.2)), 1e-9);
    assertEquals(steel.ac3Celsius(0.3), steel.fullAusteniteCelsius(0.3), 0);
    assertEquals(steel.accmCelsius(1.2), steel.fullAusteniteCelsius(1.2), 0);
    assertFalse(steel.alwaysAustenite());
  }

  /** Chromium shifts the cementite line the more the more carbon there is: 46.7 and 19.0 per %. */
  @Test
  void carbonAndChromiumTogether() {
    PhaseLines steel = of("C1.0 Cr1.0");
    assertEquals(plain.accmCelsius(1.1) + 46.7 - 6.1 + 19.0 * 1.1, steel.accmCelsius(1.1), 1e-9);
    assertEquals(1.1, steel.austeniteBesideCementitePct(steel.accmCelsius(1.1)), 1e-9);
  }

  /** A1 is the mean of the regressions; nothing is all austenite below where the lines cross. */
  @ParameterizedTest
  @ValueSource(strings = {"C0.84 Mn0.75 Si0.22", "C0.6 Mn0.88 Si2.0", "C1.0 Cr1.45", "C0.75 Ni2.0"})
  void nothingIsAllAusteniteBelowTheCrossing(String analysis) {
    PhaseLines steel = of(analysis);
    double mean = k.critical().ae1().celsius(Analyses.of(analysis));
    assertEquals(mean, steel.a1Celsius(), 0);
    double a3 = k.critical().a3Alloy().alloyShiftCelsius(Analyses.of(analysis));
    double alone = Math.max(mean, crossing(a3, analysis));
    double lowest = 2000;
    for (double c = 0.3; c < 1.3; c += 0.001) {
      double full = steel.fullAusteniteCelsius(c);
      lowest = Math.min(lowest, full);
      assertTrue(steel.ac3Celsius(c) >= alone - 0.05 && steel.accmCelsius(c) >= alone - 0.05);
    }
    assertEquals(alone, lowest, 0.2);
  }

  /**
   * Two percent of silicon make the lines cross 35 C above A1. Between the two, austenite has one
   * carbon beside ferrite and beside cementite; handbooks have Ac1 at 755 to 764 C (from memory).
   */
  @Test
  void belowTheCrossingThreePhasesStandSideBySide() {
    PhaseLines steel = of("C0.6 Mn0.88 Si2.0");
    assertEquals(750, steel.a1Celsius(), 1);
    assertEquals(785, steel.fullAusteniteCelsius(0.8), 2);
    double carbon = steel.austeniteBesideFerritePct(785);
    for (double celsius = 751; celsius < 784; celsius += 8) {
      assertEquals(carbon, steel.austeniteBesideFerritePct(celsius), 0.005);
      assertEquals(
          steel.austeniteBesideFerritePct(celsius), steel.austeniteBesideCementitePct(celsius), 0);
    }
    assertTrue(steel.austeniteBesideFerritePct(790) < steel.austeniteBesideCementitePct(790));
  }

  private double crossing(double a3Shift, String analysis) {
    double c = 0.2;
    while (plain.a3Celsius(c) + a3Shift
        > plain.accmCelsius(c)
            + k.critical().accmAlloy().alloyShiftCelsius(Analyses.of(analysis), c)) {
      c += 1e-5;
    }
    return plain.a3Celsius(c) + a3Shift;
  }

  /** From 8 % nickel on, our judgement. */
  @Test
  void muchNickelIsAustenite() {
    assertFalse(of("Ni7.9").alwaysAustenite());
    assertTrue(of("Ni8").alwaysAustenite());
    assertEquals(0, of("Ni8").austeniteBesideFerritePct(600), 0);
    assertTrue(of("Ni7.9").austeniteBesideFerritePct(760) > 0);
    assertEquals(8, of("Ni8").steel().percent(Element.NI));
  }
}
