package seamsoak.property.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.Composition;
import seamsoak.support.Analyses;

/** The published diffusivities against each other. */
class CarbonDiffusivityTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private final List<CarbonDiffusivity> all = k.phases().austeniteDiffusivities();

  /** Largest over smallest of the four that depend on carbon, to the second place. */
  @ParameterizedTest
  @CsvSource({
    "800, 1.08, 1.03, 1.16, 1.33",
    "900, 1.11, 1.08, 1.11, 1.20",
    "1000, 1.18, 1.13, 1.10, 1.10",
    "1050, 1.22, 1.15, 1.10, 1.07",
    "1100, 1.26, 1.17, 1.10, 1.05",
    "1150, 1.30, 1.19, 1.10, 1.05",
    "1200, 1.33, 1.21, 1.10, 1.08",
    "1250, 1.37, 1.23, 1.11, 1.10"
  })
  void fourAgreeAsFarAsTheBandSays(double celsius, double a, double b, double c, double d) {
    double[] spread = {a, b, c, d};
    String[] carbon = {"C0.1", "C0.4", "C0.8", "C1.2"};
    for (int i = 0; i < 4; i++) {
      Composition steel = Analyses.of(carbon[i]);
      DoubleSummaryStatistics four =
          all.subList(0, 4).stream()
              .mapToDouble(f -> f.squareMetresPerSecond(celsius + 273.15, steel))
              .summaryStatistics();
      assertEquals(spread[i], four.getMax() / four.getMin(), 0.0052, carbon[i]);
    }
  }

  /** All four rise 2.8 to 3.3 times from 0.1 to 1.2 wt% at 1000 C. */
  @Test
  void carbonSpeedsCarbonUp() {
    for (CarbonDiffusivity f : all.subList(0, 4)) {
      double little = f.squareMetresPerSecond(1273.15, Analyses.of("C0.1"));
      double much = f.squareMetresPerSecond(1273.15, Analyses.of("C1.2"));
      assertEquals(3.05, much / little, 0.3, f.correlation().name());
    }
  }

  /** Liu's mobility is never below Agren's and at most 13 % above it. */
  @ParameterizedTest
  @CsvSource({
    "850, 0.1, 0.8, 1.00, 1.05",
    "1150, 0.1, 0.8, 1.01, 1.09",
    "1150, 1.2, 1.2, 1.0, 1.13"
  })
  void newerMobilityIsNear(double celsius, double from, double to, double least, double most) {
    double t = celsius + 273.15;
    Liu2009Diffusivity liu = (Liu2009Diffusivity) all.get(4);
    for (double percent = from; percent <= to + 1e-9; percent += 0.1) {
      double y = CarbonDiffusivity.ratio(Analyses.of("C" + Math.round(percent * 10) / 10.0));
      double ratio = liu.mobility(t, y) / k.phases().mobility().squareMetresPerSecond(t, y);
      assertTrue(ratio > least - 0.005 && ratio < most + 0.005, percent + " %C: " + ratio);
    }
  }

  /** The first of the list is the engine's own in plain steel. */
  @ParameterizedTest
  @CsvSource({"900, 0.4", "1000, 0.8", "1200, 1.2"})
  void theFirstIsTheOneInUse(double celsius, double percent) {
    var steel = Steels.of("C" + percent);
    double engine = steel.law().at(celsius + 273.15).potentialSlope(steel.startRatio());
    double first = all.get(0).squareMetresPerSecond(celsius + 273.15, Analyses.of("C" + percent));
    assertEquals(first, engine, 2e-5 * first);
  }

  @Test
  void aTextbookConstantIsHalfAsFastAtTheCarbonOfABlade() {
    Composition blade = Analyses.of("C0.8");
    double used = all.get(0).squareMetresPerSecond(1273.15, blade);
    CarbonDiffusivity constant = named("callister-austenite");
    assertEquals(2.3, used / constant.squareMetresPerSecond(1273.15, blade), 0.05);
  }

  @Test
  void chromiumBeyondItsRangeIsRemarkedOn() {
    CarbonDiffusivity lee = named("lee-matlock-van-tyne2011");
    assertEquals("Cr", lee.exceeded(Analyses.named("52100"), 1000).get(0).range().quantity());
    assertTrue(lee.exceeded(Analyses.named("1084"), 1000).isEmpty());
    assertFalse(lee.exceeded(Analyses.named("1084"), 700).isEmpty());
  }

  private CarbonDiffusivity named(String name) {
    return all.stream().filter(f -> f.correlation().name().equals(name)).findFirst().orElseThrow();
  }
}
