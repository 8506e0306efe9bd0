package seamsoak.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** When a level is passed, from three moments far apart. */
class FadingTest {
  private static double passed(DoubleUnaryOperator left, double level, double... seconds) {
    Fading[] seen = new Fading[3];
    for (int i = 0; i < 3; i++) {
      seen[i] = Fading.seen(seconds[i], left.applyAsDouble(seconds[i]));
    }
    return seen[2].secondsAt(level, seen[0], seen[1]).orElseThrow();
  }

  /** The last mode of a strip fades by exp(-t): then any three moments do. */
  @Test
  void exponentialFadingIsToldExactly() {
    assertEquals(Math.log(4), passed(t -> Math.exp(-t), 0.25, 0.1, 0.9, 5), 1e-12);
    assertEquals(Math.log(4), passed(t -> Math.exp(-t), 0.25, 0.9, 0.9, 5), 1e-12);
  }

  /** A dip in thick metal fades by the root of time: within 2 % where the steps double it. */
  @Test
  void fadingByTheRootOfTimeIsToldClosely() {
    assertEquals(4, passed(t -> 1 / Math.sqrt(t), 0.5, 1.4, 2.8, 5.6), 0.02 * 4);
  }

  /** Also where the three lie so that a parabola would turn round. */
  @Test
  void neverLeavesTheStep() {
    DoubleUnaryOperator kinked = t -> t < 1 ? 1 - 0.001 * t : 0.999 * Math.exp(-(t - 1) / 100);
    for (double level = 0.1; level < 0.99; level += 0.02) {
      double at = passed(kinked, level, 0, 1, 500);
      assertTrue(at > 1 && at < 500, level + " at " + at);
    }
  }

  @Test
  void whatWasNotPassedIsNotTold() {
    Fading before = Fading.seen(1, 0.5);
    assertTrue(Fading.seen(2, 0.4).secondsAt(0.3, before, before).isEmpty());
    assertTrue(Fading.seen(2, 0.0).secondsAt(0.3, before, before).isEmpty());
  }
}
