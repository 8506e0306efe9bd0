package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;

/** Measured or worked-out cases with real analyses. */
class KnownCasesTest {
  private static final double SEAM = 0.06;
  private static Strip darken;
  private static double darkenError;

  /**
   * L.S. Darken, Trans. AIME 180 (1949) 430: silicon steel against plain steel, 13 days at 1050 C.
   * Carbon climbs into the plain side, which holds as much already. Measured at the seam 0.315 and
   * 0.586 (quoted from memory); the figures below are another computation from the same published
   * parameters.
   */
  @BeforeAll
  static void couple() {
    Grid grid = new Grid(2e-4, 1.05, false);
    Strip start =
        Strip.of(Steels.of("C0.478 Si3.80"), SEAM, grid)
            .weldedTo(Strip.of(Steels.of("C0.441"), SEAM, grid));
    StripSolver.Advanced end =
        new StripSolver(Steels.FIRE, 1e-5)
            .advance(start, HeatCurve.hold(1323.15, 312 * 3600), Edge.SEALED);
    darken = end.strip();
    darkenError = end.massErrorRelative();
  }

  @Test
  void darkenAtTheSeam() {
    assertEquals(0.318, darken.percent(darken.seam() - 1), 0.004);
    assertEquals(0.583, darken.percent(darken.seam()), 0.004);
    assertEquals(0, darkenError, 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "-25, 0.475", "-15, 0.454", "-10, 0.425", "-5, 0.379", "-2, 0.344", "-0.5, 0.325",
    "0.5, 0.578", "2, 0.564", "5, 0.535", "10, 0.495", "15, 0.467", "25, 0.444"
  })
  void darkenProfile(double millimetres, double percent) {
    assertEquals(percent, Depths.percentAt(darken, SEAM + 1e-3 * millimetres), 0.0015);
  }

  /** 0.85 C, 1000 C, one hour bare: figures of an independent computation of the same equations. */
  @Test
  void skinOfPlainSteel() {
    StripSolver.Advanced end = heated("C0.85", 1000, 3600, Edge.OPEN, 10e-3);
    assertEquals(0.127, 1e3 * end.metalLost(), 0.127 * 0.02);
    assertEquals(0.218, 1e3 * Depths.to(end.strip(), 0.50 * 0.85), 0.218 * 0.02);
    assertEquals(0.722, 1e3 * Depths.to(end.strip(), 0.90 * 0.85), 0.722 * 0.02);
    assertEquals(1.126, 1e3 * Depths.to(end.strip(), 0.98 * 0.85), 1.126 * 0.02);
  }

  /** Field reports on chromium and silicon steels put the first skin just above 700 C. */
  @ParameterizedTest
  @ValueSource(strings = {"1084", "1095", "52100", "9260", "5160"})
  void noSkinBelow700(String steel) {
    double start = Steels.metal(steel).percent(Steels.metal(steel).startRatio());
    for (double celsius : new double[] {600, 650, 700}) {
      Strip end = heated(steel, celsius, 4 * 3600, Edge.OPEN, 3e-3).strip();
      assertEquals(start, end.percent(0), 1e-9, steel + " at " + celsius);
    }
    assertTrue(heated(steel, 780, 3600, Edge.OPEN, 3e-3).strip().percent(0) < 0.7 * start);
  }

  /**
   * Carbon under scale, wt%, from the surface equilibrium alone; the figures come from the longer
   * form of the oxygen potential, of which the engine has a straight line in 1/T (3 %).
   */
  @ParameterizedTest
  @CsvSource({
    "750, 0.0124",
    "800, 0.0097",
    "850, 0.171",
    "900, 0.107",
    "950, 0.068",
    "1000, 0.045",
    "1050, 0.031",
    "1100, 0.022",
    "1150, 0.016",
    "1200, 0.012",
    "1250, 0.009"
  })
  void carbonUnderScale(double celsius, double percent) {
    Metal plain = Steels.of("C0.8");
    double kelvin = celsius + 273.15;
    double y = plain.law().at(kelvin).ratioAt(Steels.FIRE.activity().applyAsDouble(kelvin));
    assertEquals(percent, plain.percent(y), 0.0005 + 0.03 * percent);
  }

  /** Four times as long goes twice as deep, scale included. */
  @ParameterizedTest
  @ValueSource(doubles = {950, 1050, 1150})
  void depthGoesAsTheRootOfTime(double celsius) {
    StripSolver.Advanced once = heated("1084", celsius, 600, Edge.OPEN, 12e-3);
    StripSolver.Advanced longer = heated("1084", celsius, 2400, Edge.OPEN, 12e-3);
    assertEquals(2, longer.metalLost() / once.metalLost(), 1e-9);
    double ratio = Depths.to(longer.strip(), 0.756) / Depths.to(once.strip(), 0.756);
    assertEquals(2, ratio, 0.01);
  }

  /** Hotter goes deeper; half covered goes less deep and loses less metal than bare. */
  @Test
  void moreFireMoreSkin() {
    double last = 0;
    for (double celsius : new double[] {900, 1000, 1100, 1200}) {
      double depth = Depths.to(heated("1084", celsius, 1800, Edge.OPEN, 12e-3).strip(), 0.75);
      assertTrue(depth > last, celsius + " C");
      last = depth;
    }
    StripSolver.Advanced bare = heated("1084", 1100, 1800, Edge.OPEN, 12e-3);
    StripSolver.Advanced half = heated("1084", 1100, 1800, new Edge(0.5), 12e-3);
    assertTrue(half.carbonLost() < bare.carbonLost());
    assertEquals(Math.sqrt(0.5), half.metalLost() / bare.metalLost(), 1e-9);
  }

  /** A fire with more carbon than the steel brings none in, under any cover. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1})
  void theEdgeOnlyTakesCarbonOut(double share) {
    Surroundings rich = new Surroundings(t -> 0.9, t -> 0);
    for (String steel : new String[] {"iron", "1018", "nickel", "D2"}) {
      Metal metal = Steels.metal(steel);
      Strip strip = Strip.of(metal, 1e-3, new Grid(1e-2, 1.1, false));
      StripSolver.Advanced end =
          new StripSolver(rich, 1e-3)
              .advance(strip, HeatCurve.hold(1273.15, 3600), new Edge(share));
      assertEquals(strip.carbon(), end.strip().carbon(), 1e-15 * strip.carbon(), steel);
      assertEquals(0, end.carbonLost(), 0, steel);
    }
  }

  /** Carbon that a mild jacket took up from its body burns off again, as it would off the body. */
  @Test
  void aJacketRicherThanItCameLosesCarbon() {
    Metal mild = Steels.metal("1008");
    Surroundings middling = new Surroundings(t -> 0.1, t -> 0);
    double rich = mild.lattice().ratio(0.5);
    double[] metres = new double[50];
    double[] ratio = new double[50];
    java.util.Arrays.fill(metres, 20e-6);
    java.util.Arrays.fill(ratio, rich);
    StripSolver.Advanced end =
        new StripSolver(middling, 1e-3)
            .advance(Strip.of(mild, metres, ratio), HeatCurve.hold(1273.15, 3600), Edge.OPEN);
    assertTrue(mild.law().at(1273.15).activity(mild.startRatio()) < 0.1);
    assertTrue(end.carbonLost() > 0.1 * rich * 1e-3);
  }

  private static StripSolver.Advanced heated(
      String steel, double celsius, double seconds, Edge edge, double metres) {
    Metal metal = steel.startsWith("C") ? Steels.of(steel) : Steels.metal(steel);
    Strip strip = Strip.of(metal, metres, new Grid(2e-4, 1.05, false));
    return new StripSolver(Steels.FIRE, 1e-4)
        .advance(strip, HeatCurve.hold(celsius + 273.15, seconds), edge);
  }
}
