package seamsoak.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RootsTest {
  @Test
  void smoothSteepAndKinked() {
    assertEquals(Math.sqrt(2), Roots.between(x -> x * x - 2, 0, 2, 1e-14), 1e-13);
    assertEquals(Math.log(1e9), Roots.between(x -> Math.exp(x) - 1e9, 0, 40, 1e-13), 1e-12);
    assertEquals(
        0.3, Roots.between(x -> x < 0.3 ? -1e-9 : 1e6 * (x - 0.3) + 1, 0, 1, 1e-12), 1e-11);
    assertEquals(1, Roots.between(x -> Math.pow(x - 1, 9), 0, 5, 1e-9), 1e-8);
  }

  @Test
  void eitherDirectionAndAtTheEnds() {
    assertEquals(0.5, Roots.between(x -> 1 - 2 * x, 0, 3, 1e-12), 1e-12);
    assertEquals(0.5, Roots.between(x -> 1 - 2 * x, 3, 0, 1e-12), 1e-12);
    assertEquals(3, Roots.between(x -> x - 3, 0, 3, 1e-12), 0);
    assertEquals(0, Roots.between(x -> x, 0, 3, 1e-12), 0);
  }

  @Test
  void refusesWhereTheSignDoesNotChange() {
    assertThrows(IllegalArgumentException.class, () -> Roots.between(x -> x * x + 1, -1, 1, 1e-9));
    assertThrows(IllegalArgumentException.class, () -> Roots.between(x -> Double.NaN, -1, 1, 1e-9));
  }
}
