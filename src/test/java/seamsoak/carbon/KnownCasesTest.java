package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static seamsoak.support.Analyses.CORRELATIONS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.property.forging.ScalingConstant;
import seamsoak.support.Depths;

/** Measured or worked-out cases with real analyses. */
class KnownCasesTest {
  @Test
  void darkenCoupleKeepsItsCarbon() {
    assertEquals(0, DarkenCouple.heated().massErrorRelative(), 1e-12);
  }

  /**
   * Scale matters little to the depth: with the constant of iron, three times that of steel, it is
   * 6 to 7 % less. Measured on 300M spring steel too, whose depth rose from 800 to 1000 C and
   * hardly minded thinner scale (Wright 2010).
   */
  @ParameterizedTest
  @ValueSource(doubles = {1000, 1100, 1150})
  void scaleMattersLittleToTheDepth(double celsius) {
    double steel = depthUnder(CORRELATIONS.forging().steelScaling(), celsius);
    double iron = depthUnder(CORRELATIONS.forging().ironScaling(), celsius);
    assertEquals(0.935, iron / steel, 0.01);
  }

  private static double depthUnder(ScalingConstant law, double celsius) {
    Surroundings fire = new Surroundings(Steels.FIRE.activity(), law::squareMetresPerSecond);
    Strip start = Strip.of(Steels.of("C0.85"), 10e-3, new Grid(2e-4, 1.05, false));
    Strip end =
        new StripSolver(fire, 1e-4)
            .advance(start, HeatCurve.hold(celsius + 273.15, 3600), Edge.OPEN)
            .strip();
    return Depths.to(end, 0.92 * 0.85);
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
    for (double celsius : new double[] {800, 900, 1000, 1100, 1200}) {
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
