package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
import seamsoak.property.phase.MetalLattice;
import seamsoak.support.Analyses;

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
