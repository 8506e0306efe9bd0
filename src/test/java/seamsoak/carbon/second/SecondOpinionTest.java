package seamsoak.carbon.second;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Resolution;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.second.SecondCase.Apart;

/**
 * The engine against the same problem put and solved another way. Allowed: 0.001 wt% where all is
 * austenite, 0.01 wt% where a front between phases crosses the metal or carbide is left.
 */
class SecondOpinionTest {
  private static final double SMOOTH = 1e-3;
  private static final double LEVEL = 1e-2;
  private static final double TOLERANCE = 1e-4;

  static Stream<Arguments> cases() {
    return Stream.concat(
        SecondCases.smooth().stream().map(c -> Arguments.of(c.name(), c, SMOOTH)),
        SecondCases.levels().stream().map(c -> Arguments.of(c.name(), c, LEVEL)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void sameCarbonEverywhere(String name, SecondCase problem, double allowed) {
    SecondStrip.Answer second = problem.second(TOLERANCE);
    StripSolver.Advanced engine = problem.engine(2e-4, 1.05, 1e-4);
    Apart apart = problem.apart(engine, second);
    assertTrue(apart.mostPct() <= allowed, apart::toString);
    assertTrue(apart.summedPct() <= allowed, apart::toString);
    // its drift with the scale is not in a form that conserves carbon of itself
    assertTrue(problem.missingPct(engine, second) <= allowed);
    assertEquals(second.metalLost(), engine.metalLost(), 1e-6 * second.metalLost());

    // as coarse as the walk computes, the carbon summed to any depth still agrees
    Resolution walk = Resolution.FINE;
    StripSolver.Advanced coarse =
        problem.engine(
            walk.finestMetres() / problem.parts().get(0).metres(),
            walk.growth(),
            walk.relativeTolerance());
    Apart walked = problem.apart(coarse, second);
    assertTrue(walked.summedPct() <= allowed, walked::toString);
  }
}
