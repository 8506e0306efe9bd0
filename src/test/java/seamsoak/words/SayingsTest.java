package seamsoak.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SayingsTest {
  private sealed interface Metal {}

  private record Iron(double meltsC) implements Metal {}

  private enum Noble implements Metal {
    GOLD
  }

  private static Sayings<String, Metal, String> ofIron() {
    return new Sayings<String, Metal, String>(Metal.class)
        .of(Iron.class, (who, iron) -> who + ": melts at " + Math.round(iron.meltsC()));
  }

  @Test
  void eachKindIsSaidByItsOwn() {
    Sayings<String, Metal, String> all =
        ofIron().of(Noble.class, (who, noble) -> who + ": " + noble.name()).complete();
    assertEquals("smith: melts at 1538", all.say("smith", new Iron(1538)));
    assertEquals("smith: GOLD", all.say("smith", Noble.GOLD));
  }

  @Test
  void noneIsLeftOut() {
    assertThrows(IllegalStateException.class, ofIron()::complete);
  }
}
