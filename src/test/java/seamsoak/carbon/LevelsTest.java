package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.property.phase.PhaseLines;
import seamsoak.support.Analyses;

/** Where the engine's levels end on heating, against the phase lines of the same analyses. */
class LevelsTest {
  /**
   * A3 of the iron-carbon line with Andrews's alloy terms (J. Iron Steel Inst. 203 (1965) 721), to
   * whole degrees; the engine adds that nothing ends below A1.
   */
  @ParameterizedTest
  @CsvSource({
    "C0.18 Mn0.75 Si0.20, 829",
    "C0.45 Mn0.75 Si0.22, 764",
    "C0.2, 836.4",
    "C0.4, 787.1",
    "C0.6, 750.5"
  })
  void ferriteEnds(String analysis, double a3) {
    assertEquals(a3, levelEnds(analysis), 3);
  }

  /**
   * Accm with Lee and Lee's alloy terms (ISIJ Int. 47 (2007) 769), tungsten and vanadium ignored.
   */
  @ParameterizedTest
  @CsvSource({
    "C0.75 Mn0.55 Si0.22, 730",
    "C0.84 Mn0.75 Si0.22, 768",
    "C0.95 Mn0.40 Si0.20, 807",
    "C1.0 Mn0.35 Si0.25 Cr1.45, 909",
    "C0.92 Mn1.2 Si0.30 Cr0.5 W0.5 V0.2, 834",
    "C0.75 Mn0.40 Si0.25 Ni2.0, 725",
    "C0.83 Mn0.45 Si0.30 Cr0.55 V0.20, 795",
    "C1.0 Mn0.25 Si0.25 Cr0.12 V0.20, 833",
    "C0.72 Mn0.60 Si0.25 Cr0.80 Ni1.6 Mo0.20, 756",
    "C0.8, 742.6",
    "C1.0, 819.4",
    "C1.2, 890.6"
  })
  void carbideEnds(String analysis, double accm) {
    assertEquals(accm, levelEnds(analysis), 3);
  }

  /** The end follows the alloy: hand sums on the iron-carbon line. */
  @Test
  void followsTheAlloy() {
    assertEquals(750.5 + 44.7 * 2 - 30 * 0.88, levelEnds("C0.60 Mn0.88 Si2.0"), 3);
    double chromium = 46.7 * 1.45 + 19 * 1.45 - 6.1 * 1.45 * 1.45 + 7.6 * 0.35 + 16.7 * 0.25;
    assertEquals(819.4 + chromium, levelEnds("C1.0 Mn0.35 Si0.25 Cr1.45"), 3);
  }

  /** 5160 lies at its own eutectoid: both lines fall below A1, where austenite begins. */
  @Test
  void nothingEndsBelowA1() {
    PhaseLines lines = Analyses.CORRELATIONS.lines(Analyses.named("5160"));
    assertEquals(lines.a1Celsius(), levelEnds("C0.60 Mn0.88 Si0.22 Cr0.80"), 0.01);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1018", "1045", "1084", "1095", "52100", "9260", "O1", "75Ni8", "L6", "D2"})
  void oneDefinitionForEngineAndSchedule(String name) {
    PhaseLines lines = Analyses.CORRELATIONS.lines(Analyses.named(name));
    double ends = levelEnds(Steels.metal(name));
    assertEquals(lines.fullAusteniteCelsius(Analyses.named(name).carbon()), ends, 0.01);
  }

  private static double levelEnds(String analysis) {
    return levelEnds(Steels.of(analysis));
  }

  /** Temperature above which carbon moves at the steel's own content, by halving, C. */
  private static double levelEnds(Metal metal) {
    double low = 690;
    double high = 1290;
    assertTrue(slope(metal, low) == 0 && slope(metal, high) > 0);
    while (high - low > 1e-3) {
      double middle = 0.5 * (low + high);
      if (slope(metal, middle) > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private static double slope(Metal metal, double celsius) {
    return metal.law().at(celsius + 273.15).potentialSlope(metal.startRatio());
  }

  /**
   * A cell on its way through ferrite, the level, austenite and carbide stops at each border once,
   * where the slope is that of the far side; on the way back too.
   */
  @ParameterizedTest
  @ValueSource(doubles = {700, 760, 800, 900, 1000})
  void stopsBeyondEachBorder(double celsius) {
    CarbonLaw.Isotherm law = Steels.of("C0.77").law().at(celsius + 273.15);
    List<Double> up = stops(law, 0, 0.2);
    List<Double> down = stops(law, 0.2, 0);
    for (double stop : up) {
      assertBorder(law, stop, Math.nextDown(stop));
    }
    for (double stop : down) {
      assertBorder(law, stop, Math.nextUp(stop));
    }
    int borders = celsius < 727 ? 1 : celsius < 912 ? 3 : 1;
    assertEquals(borders, up.size());
    assertEquals(borders, down.size());
  }

  private static void assertBorder(CarbonLaw.Isotherm law, double stop, double before) {
    assertTrue((law.potentialSlope(stop) == 0) != (law.potentialSlope(before) == 0));
  }

  private static List<Double> stops(CarbonLaw.Isotherm law, double from, double to) {
    List<Double> stops = new ArrayList<>();
    double[] here = {from};
    double[] next = {to};
    while (law.stopAtBends(here, next, 0, 1)) {
      stops.add(next[0]);
      here[0] = next[0];
      next[0] = to;
    }
    assertEquals(to, next[0]);
    return stops;
  }
}
