package seamsoak.billet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import seamsoak.support.FlatRestack;
import seamsoak.support.FlatRestack.Bar;
import seamsoak.support.FlatRestacks;

/** The family is one that a smith would make, so that no refusal of it can be true. */
class FlatRestacksTest {
  private static final List<FlatRestack> ALL = FlatRestacks.all();

  /** Over all its heats the hottest and longest fire takes off less than twice the trade's rule. */
  private static final double HEAVY_SCALE_INCHES = 2 * FlatRestack.SCALE_INCHES;

  @Test
  void itIsAsWideAsTheTrade() {
    assertTrue(ALL.size() >= 60, ALL.size() + " billets");
    assertEquals(ALL.size(), ALL.stream().map(FlatRestack::name).distinct().count());
    assertEquals(ALL.size(), ALL.stream().map(FlatRestack::json).distinct().count());
    assertTrue(ALL.stream().allMatch(f -> f.layers() >= 60 && f.layers() <= 800));
    assertTrue(ALL.stream().anyMatch(f -> f.layers() < 100));
    assertTrue(ALL.stream().anyMatch(f -> f.layers() > 600));
    assertEquals(Set.of(1, 2, 3), each(f -> f.rounds().size()));
    assertTrue(each(f -> f.stack().steels()).size() >= 5);
    assertTrue(each(FlatRestack::grindInches).size() >= 3, "brushed, and ground to some depths");
    assertTrue(each(f -> f.last().thickness()).containsAll(Set.of(0.1875, 0.25, 0.375, 0.5)));
    assertEquals(Set.of(2, 3), each(f -> f.fire().weld().times()));
    assertEquals(200, FlatRestacks.usual().layers());
  }

  private static <T> Set<T> each(Function<FlatRestack, T> of) {
    return ALL.stream().map(of).collect(Collectors.toSet());
  }

  /** Even under heavy scale no bar is anywhere thinner than the thinnest asked for in the end. */
  @Test
  void heavyScaleLeavesMetalEverywhere() {
    for (FlatRestack one : ALL) {
      assertTrue(one.canBeMade(FlatRestack.SCALE_INCHES), one.name());
      for (Bar bar : one.bars(HEAVY_SCALE_INCHES)) {
        assertTrue(bar.thickness() >= 0.1875 - 1e-9, one + ": " + bar);
        assertTrue(bar.width() > 0.75 && bar.length() > 1, one + ": " + bar);
      }
    }
  }

  /** Of the trade's arithmetic and the walk each knows nothing of the other. */
  @Test
  void theFileSaysWhatTheArithmeticSays() {
    for (FlatRestack one : ALL) {
      Billet billet = one.billet();
      assertEquals(one.stack().layers(), billet.stack().layers());
      int pieces =
          billet.steps().stream()
              .filter(Step.Restack.class::isInstance)
              .mapToInt(s -> ((Step.Restack) s).high() * ((Step.Restack) s).across())
              .reduce(1, (a, b) -> a * b);
      assertEquals(one.layers(), one.stack().layers() * pieces);
      assertEquals(
          one.stack().thicknessInches() * 25.4e-3, billet.stack().thickness().metres(), 1e-4);
    }
  }
}
