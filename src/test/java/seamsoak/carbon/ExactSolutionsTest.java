package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.carbon.problem.FiniteDip;
import seamsoak.carbon.problem.HalfSpace;
import seamsoak.carbon.problem.Lamellae;
import seamsoak.carbon.problem.MovingScale;
import seamsoak.carbon.problem.PartitionCouple;
import seamsoak.carbon.problem.PhaseLaw;
import seamsoak.carbon.problem.Problem;
import seamsoak.carbon.problem.SeamOfTwoFaces;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Analyses;
import seamsoak.property.MetalLattice;

/** The engine against closed forms, cell by cell. Carbon is in any unit: the metals are linear. */
class ExactSolutionsTest {
  private static final double TIGHT = 1e-6;
  private static final double D = 2.5e-11;
  private static final HalfSpace FACE = new HalfSpace(D, 0.8, 0, 300);

  static List<Problem> problems() {
    return List.of(
        new HalfSpace(D, 0.8, 0.05, 600),
        new HalfSpace(4e-10, 0.03, 0, 7200),
        new FiniteDip(D, 0.8, 0.6, 25e-6, 5),
        new FiniteDip(D, 0.8, 0.6, 25e-6, 20),
        new FiniteDip(D, 0.8, 0.6, 25e-6, 60),
        new SeamOfTwoFaces(FACE, 100),
        new SeamOfTwoFaces(FACE, 300),
        new SeamOfTwoFaces(FACE, 1000),
        new SeamOfTwoFaces(FACE, 3000),
        new Lamellae(D, 1, 0.2, 200e-6, 0.5, 20),
        new Lamellae(D, 1, 0.2, 200e-6, 0.5, 60),
        new Lamellae(D, 1, 0.2, 200e-6, 0.5, 200),
        new Lamellae(D, 0.2, 1, 300e-6, 0.25, 60),
        new Lamellae(D, 0.2, 1, 300e-6, 0.75, 200),
        new PartitionCouple(4e-11, 2.5e-11, 0.75, 0.84, 0.6, 1800),
        new PartitionCouple(1e-12, 2.5e-11, 0.1, 0.84, 3, 600),
        new MovingScale(D, 2.2e-12, 0.85, 0.045, 3600),
        new MovingScale(D, 6.5e-12, 0.85, 0, 600),
        new MovingScale(1e-11, 3e-11, 0.85, 0, 1800));
  }

  @ParameterizedTest
  @MethodSource("problems")
  void agrees(Problem p) {
    double worst = p.worstError(TIGHT);
    assertTrue(worst <= p.allowed(), () -> "worst " + worst + ", allowed " + p.allowed());
  }

  @ParameterizedTest
  @MethodSource("problems")
  void agreesAtTheToleranceForAdviceToThreeThousandths(Problem p) {
    double worst = p.worstError(1e-3);
    assertTrue(worst <= 3e-3, () -> "worst " + worst);
  }

  @ParameterizedTest
  @CsvSource({"5, 0.2683", "20, 0.4575", "60, 0.5888"})
  void middleOfADip(double seconds, double expected) {
    FiniteDip p = new FiniteDip(D, 0.8, 0.6, 25e-6, seconds);
    assertEquals(expected, p.solved(TIGHT).ratio(0), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({"100, 0.2667", "300, 0.4000", "1000, 0.5448", "3000, 0.6440"})
  void seamOfTwoFaces(double seconds, double expected) {
    SeamOfTwoFaces p = new SeamOfTwoFaces(FACE, seconds);
    assertEquals(expected, p.exactAtSeam(), 1e-4);
    assertEquals(p.exactAtSeam(), p.exact(0), 1e-6);
    assertEquals(expected, p.solved(TIGHT).ratio(0), 3e-4);
  }

  @ParameterizedTest
  @CsvSource({"20, 0.6178", "60, 0.2318", "200, 0.0073"})
  void rangeLeftInEqualLamellae(double seconds, double expected) {
    Strip end = new Lamellae(D, 1, 0.2, 200e-6, 0.5, seconds).solved(TIGHT);
    assertEquals(expected, end.ratio(0) - end.ratio(end.cells() - 1), 1e-4);
  }

  @Test
  void carbonEitherSideOfAPartition() {
    PartitionCouple p = new PartitionCouple(4e-11, 2.5e-11, 0.75, 0.84, 0.6, 1800);
    Strip end = p.solved(TIGHT);
    assertEquals(0.6101, p.exactFirstAtSeam(), 5e-5);
    assertEquals(1.0169, p.exactSecondAtSeam(), 5e-5);
    assertEquals(0.6101, end.ratio(end.seam() - 1), 5e-4);
    assertEquals(1.0169, end.ratio(end.seam()), 5e-4);
  }

  /**
   * Metal lost and depth to 0.92 of 0.85 wt% below the scale, um, D of Agren at 0.4 wt%, k_c 57.1
   * exp(-21720/T) mm2/s: the same formula worked out by other hands. Half a percent of depth, as
   * the carbon here is per atom, there per weight.
   */
  @ParameterizedTest
  @CsvSource({
    "1000, 10, 52, 297",
    "1000, 60, 127, 729",
    "1000, 120, 179, 1030",
    "1100, 10, 96, 483",
    "1150, 10, 127, 599",
    "1150, 60, 311, 1466",
    "1250, 10, 210, 879"
  })
  void depthBelowAMovingScale(double celsius, double minutes, double lost, double depth) {
    double kelvin = celsius + 273.15;
    Metal plain = Steels.of("C0.85");
    double d = plain.law().at(kelvin).potentialSlope(plain.lattice().ratio(0.4));
    double surface = plain.law().at(kelvin).ratioAt(Steels.FIRE.activity().applyAsDouble(kelvin));
    double scaling = Steels.FIRE.scaling().applyAsDouble(kelvin);
    MovingScale p = new MovingScale(d, scaling, plain.startRatio(), surface, 60 * minutes);
    StripSolver.Advanced end = p.advanced(1e-5);
    assertEquals(lost, 1e6 * end.metalLost(), 0.6);
    assertEquals(depth, 1e6 * Depths.to(end.strip(), 0.92 * 0.85), 0.005 * depth);
    assertEquals(p.carbonLost(), end.carbonLost(), 5e-4 * p.carbonLost());
  }

  /** On a heat with ramps and a jump only the integral of D over time matters. */
  @Test
  void diffusionTimeOnRamps() {
    HeatCurve heat =
        new HeatCurve(
            List.of(
                new HeatCurve.Segment(293.15, 1373.15, 300),
                new HeatCurve.Segment(1373.15, 1373.15, 60),
                new HeatCurve.Segment(1173.15, 900, 200)));
    DoubleUnaryOperator diffusivity = t -> 2e-5 * Math.exp(-17500 / t);
    double tau = 0;
    for (HeatCurve.Segment s : heat.segments()) {
      for (int i = 0; i < 20000; i++) {
        double at = (i + 0.5) * s.seconds() / 20000;
        tau += diffusivity.applyAsDouble(s.kelvinAt(at)) * s.seconds() / 20000;
      }
    }
    Lamellae exact = new Lamellae(1, 1, 0.2, 200e-6, 0.5, tau);
    Metal metal =
        new Metal(
            "plain",
            t -> PhaseLaw.single(diffusivity.applyAsDouble(t), 1),
            MetalLattice.of(Analyses.of("")),
            1);
    Strip start = exact.start(metal);
    Strip end = new StripSolver(Steels.FIRE, TIGHT).advance(start, heat, Edge.SEALED).strip();
    assertTrue(exact.worstError(end) < exact.allowed());
  }

  @Test
  void aTighterToleranceBringsTheAnswerNearer() {
    Problem p = new Lamellae(D, 1, 0.2, 200e-6, 0.5, 60);
    double loose = p.worstError(1e-2);
    double middling = p.worstError(1e-4);
    double tight = p.worstError(1e-6);
    assertTrue(
        middling < loose / 3 && tight < middling / 2,
        () -> loose + " then " + middling + " then " + tight);
  }
}
