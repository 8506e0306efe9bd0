package seamsoak.page.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** A hold is counted right through sleep, a clock that is set, and a program that was killed. */
class HoldTest {
  private static final long MINUTE = 60_000;

  /** Two clocks that go as a test says. */
  private static final class Clocks implements Clock {
    private long millis = 1_795_000_000_000L;
    private long nanos = Long.MAX_VALUE - 5; // and a count may wrap

    void pass(long byClock, long byCount) {
      millis += byClock;
      nanos += TimeUnit.MILLISECONDS.toNanos(byCount);
    }

    @Override
    public long millis() {
      return millis;
    }

    @Override
    public long nanos() {
      return nanos;
    }
  }

  private final Clocks clocks = new Clocks();
  private final AtomicReference<String> kept = new AtomicReference<>("");
  private final Holds holds = new Holds(clocks, "", kept::set);

  private long left() {
    return holds.of("b.json").orElseThrow().leftMillis();
  }

  private void begin() {
    holds.begin("b.json", 2, 3, "Step 2 draw, heat 3", 10);
  }

  @Test
  void itCountsDownAndOver() {
    begin();
    clocks.pass(4 * MINUTE, 4 * MINUTE);
    assertEquals(6 * MINUTE, left());
    assertEquals(clocks.millis() + 6 * MINUTE, holds.of("b.json").orElseThrow().endMillis());
    clocks.pass(7 * MINUTE, 7 * MINUTE);
    assertEquals(-MINUTE, left());
    holds.longer("b.json", 2);
    assertEquals(MINUTE, left());
    assertTrue(holds.areRunning());
    holds.end("b.json");
    assertFalse(holds.areRunning());
  }

  @Test
  void aComputerThatSleptHasNotStoppedIt() {
    begin();
    clocks.pass(6 * MINUTE, 1000);
    assertEquals(4 * MINUTE, left());
    assertTrue(holds.of("b.json").orElseThrow().jumped(), "sleep or a set clock: told");
  }

  @Test
  void aClockThatWasSetBackMakesItNoLonger() {
    begin();
    clocks.pass(2 * MINUTE, 2 * MINUTE);
    assertEquals(8 * MINUTE, left());
    clocks.pass(-60 * MINUTE, 1 * MINUTE);
    assertEquals(7 * MINUTE, left());
    assertFalse(holds.of("b.json").orElseThrow().jumped());
    clocks.pass(3 * MINUTE, 3 * MINUTE);
    assertEquals(4 * MINUTE, left());
  }

  @Test
  void aSmallStepOfTheClockIsNoJump() {
    begin();
    clocks.pass(MINUTE + 2000, MINUTE);
    assertFalse(holds.of("b.json").orElseThrow().jumped());
    assertEquals(9 * MINUTE - 2000, left());
  }

  @Test
  void itOutlivesTheProgram() {
    begin();
    clocks.pass(3 * MINUTE, 3 * MINUTE);
    Clocks later = new Clocks();
    later.pass(5 * MINUTE, -123);
    Holds again = new Holds(later, kept.get(), text -> {});
    Hold hold = again.of("b.json").orElseThrow();
    assertEquals(5 * MINUTE, hold.leftMillis());
    assertEquals("Step 2 draw, heat 3", hold.title());
    assertEquals(3, hold.heat());
  }

  @Test
  void whatIsNoneOfOursCountsNothing() {
    for (String text : new String[] {"{", "[]", "{ \"b.json\": 3 }", "{ \"b.json\": {} }"}) {
      assertFalse(new Holds(clocks, text, t -> {}).areRunning(), text);
    }
  }

  @Test
  void oneThatNobodyTookOutIsForgottenInTheEnd() {
    begin();
    clocks.pass(13 * 60 * MINUTE, 13 * 60 * MINUTE);
    assertFalse(holds.areRunning());
  }
}
