package seamsoak.page.fire;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/**
 * A hold that is being counted. What went by since it was looked at last is the longer of what the
 * clock and the count say: a computer that slept stops only the count, and a clock that was set
 * back only lags. One that was set ahead looks like sleep, so that is told.
 *
 * @param step number of the step in the file, or the one after the last
 * @param heat which of its stays in the fire
 * @param title of what it counts
 * @param wantedMillis how long it is to be
 * @param goneMillis how much of that had gone by when it was looked at last
 * @param seenMillis when that was, by the clock
 * @param seenNanos when that was, by the count
 * @param jumped whether the clock went ahead of the count meanwhile
 */
public record Hold(
    int step,
    int heat,
    String title,
    long wantedMillis,
    long goneMillis,
    long seenMillis,
    long seenNanos,
    boolean jumped) {
  /** Further than a clock is put right by itself, ms. */
  private static final long JUMP_MILLIS = 30_000;

  static Hold begun(int step, int heat, String title, long wantedMillis, Clock clock) {
    return new Hold(step, heat, title, wantedMillis, 0, clock.millis(), clock.nanos(), false);
  }

  /** The same one, looked at now. */
  Hold at(Clock clock) {
    long millis = clock.millis();
    long nanos = clock.nanos();
    long byClock = millis - seenMillis;
    long byCount = TimeUnit.NANOSECONDS.toMillis(nanos - seenNanos);
    return new Hold(
        step,
        heat,
        title,
        wantedMillis,
        goneMillis + Math.max(byClock, byCount),
        millis,
        nanos,
        jumped || byClock - byCount > JUMP_MILLIS);
  }

  /** The same one in another run of the program, whose count is another. */
  Hold again(Clock clock) {
    long gone = Math.max(0, clock.millis() - seenMillis);
    return new Hold(
        step, heat, title, wantedMillis, goneMillis + gone, clock.millis(), clock.nanos(), jumped);
  }

  Hold longer(long millis) {
    return new Hold(
        step,
        heat,
        title,
        Math.max(0, wantedMillis + millis),
        goneMillis,
        seenMillis,
        seenNanos,
        jumped);
  }

  /** Below zero once it is over. */
  public long leftMillis() {
    return wantedMillis - goneMillis;
  }

  /** When it is over, by the computer's clock as it was when it was looked at. */
  public long endMillis() {
    return seenMillis + leftMillis();
  }

  /**
   * What was entered, with how long it was held where it was taken out by the clock: as planned
   * where that is within half a minute. What was typed counts before it.
   *
   * @param hold the clock, if one runs
   */
  public static Map<String, String> told(Map<String, String> form, Optional<Hold> hold) {
    Map<String, String> all = new LinkedHashMap<>(form);
    if (!"now".equals(all.remove("how")) || hold.isEmpty()) {
      return all;
    }
    String sent = form.getOrDefault("held", "");
    double gone =
        sent.matches("[0-9]{1,4}(\\.[0-9]{1,2})?")
            ? Double.parseDouble(sent)
            : hold.get().goneMillis() / 60_000.0;
    boolean typed =
        !all.getOrDefault("for", "").isBlank() || !all.getOrDefault("longer", "").isBlank();
    if (Math.abs(gone - hold.get().wantedMillis() / 60_000.0) >= 0.5 && !typed) {
      double seconds = Math.max(30, 30 * Math.round(2 * gone));
      all.put("for", new TimeSpan(seconds).format(UnitSystem.METRIC));
    }
    return all;
  }
}
