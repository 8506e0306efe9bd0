package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static seamsoak.support.Analyses.CORRELATIONS;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.GrowingRim;
import seamsoak.carbon.problem.PhaseLaw;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.support.Depths;

/** Fronts between phases against Neumann's solution, then ferrite rims of a real analysis. */
class PhaseFrontsTest {
  private static final double FREE = Double.POSITIVE_INFINITY;

  static Stream<Arguments> fronts() {
    return Stream.of(
        Arguments.of(
            "ferrite rim, 800 C",
            new GrowingRim(new PhaseLaw(1.7e-10, 0.012, 0.34, 3e-12, FREE), 0.77, 0.0097, 3600)),
        Arguments.of(
            "ferrite rim without CO",
            new GrowingRim(new PhaseLaw(1.7e-10, 0.012, 0.34, 3e-12, FREE), 0.77, 0, 3600)),
        Arguments.of(
            "carbide dissolving",
            new GrowingRim(new PhaseLaw(5e-12, 0.9, 9, 5e-12, FREE), 1.5, 0.1, 3600)),
        Arguments.of(
            "much carbide dissolving",
            new GrowingRim(new PhaseLaw(5e-12, 0.5, 9, 5e-12, FREE), 4.5, 0.1, 3600)));
  }

  /** On 300 cells or so the front's place is known to a share of a cell, the loss better. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("fronts")
  void frontAndLoss(String name, GrowingRim p) {
    StripSolver.Advanced end = p.advanced(1e-5);
    double rim =
        Depths.rim(end.strip(), p.law().firstMost(), Math.min(p.start(), p.law().secondLeast()));
    assertEquals(p.rimMetres(), rim, 0.01 * p.rimMetres());
    assertEquals(p.carbonLost(), end.carbonLost(), 0.003 * p.carbonLost());
    assertEquals(0, end.massErrorRelative(), 1e-12);
  }

  /** The formula's own carbon balance: what the profile lacks is what left. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("fronts")
  void formulaBalances(String name, GrowingRim p) {
    double reach = 14 * Math.sqrt(p.law().secondDiffusivity() * p.seconds());
    double lacking =
        lacking(p, 0, p.rimMetres()) + lacking(p, p.rimMetres(), p.rimMetres() + reach);
    assertEquals(p.carbonLost(), lacking, 1e-5 * p.carbonLost());
  }

  private static double lacking(GrowingRim p, double from, double to) {
    int n = 20000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += p.start() - p.exact(from + (i + 0.5) * (to - from) / n);
    }
    return sum * (to - from) / n;
  }

  /**
   * Plain 0.77 C, one hour, scale not eating. The closed form takes one diffusivity for all the
   * austenite; the published rims, reference rows, are its own with that of the bulk. The engine's
   * falls with carbon, so its rim lies between this and the form with the diffusivity of the
   * austenite at the front, which feeds the front more slowly: up to 3 um more under scale, 8 um
   * without CO.
   */
  @ParameterizedTest
  @CsvSource({
    "750, 1", "775, 1", "800, 1", "825, 1", "750, 0", "775, 0", "800, 0", "825, 0", "850, 0",
    "875, 0", "900, 0"
  })
  void ferriteRimOfPlainSteel(double celsius, double carbonMonoxide) {
    FerriteRim rim = new FerriteRim(0.77, celsius, carbonMonoxide);
    double engine = rim.engine();
    assertTrue(
        engine > rim.fedAsBulk() - 0.5 && engine < rim.fedAsFront() + 0.5,
        () -> rim.fedAsBulk() + " < " + engine + " < " + rim.fedAsFront());
  }

  /** 52100 at 750 C: austenite to the face under whole scale, a ferrite rim where CO escapes. */
  @Test
  void lessCarbonMonoxideMakesARim() {
    for (double atm : new double[] {1, 0.5}) {
      Surroundings fire =
          new Surroundings(
              t -> Math.exp(CORRELATIONS.phases().scaledSurface().lnActivity(t, atm)), t -> 0);
      Strip bare = Strip.of(Steels.metal("52100"), 3e-3, new Grid(3e-4, 1.05, false));
      Strip end =
          new StripSolver(fire, 1e-4)
              .advance(bare, HeatCurve.hold(1023.15, 3600), Edge.OPEN)
              .strip();
      assertEquals(atm < 1, end.percent(0) < 0.03, () -> end.percent(0) + " %C outside");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {850, 875, 900})
  void noRimUnderScaleFrom850(double celsius) {
    assertEquals(0, new FerriteRim(0.77, celsius, 1).engine(), 1e-9);
  }

  @Test
  void noFerriteAbove912() {
    assertTrue(new FerriteRim(0.77, 905, 0).engine() > 5);
    assertEquals(0, new FerriteRim(0.77, 912, 0).engine(), 1e-9);
  }
}
