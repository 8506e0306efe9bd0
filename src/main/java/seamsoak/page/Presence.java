package seamsoak.page;

import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** Whether somebody is still at the page. */
final class Presence {
  /** How often to look. */
  static final long LOOK_SECONDS = 20;

  /** A window with the script asks for news all the time. */
  private static final long GONE_SECONDS = 600;

  /** One without it says nothing until something is pressed. */
  private static final long SILENT_SECONDS = 7200;

  private final LongSupplier nanos;
  private long last;
  private boolean talks;

  Presence(LongSupplier nanos) {
    this.nanos = nanos;
    this.last = nanos.getAsLong();
  }

  /**
   * Somebody came.
   *
   * @param byItself whether by the script of a window that is open
   */
  synchronized void came(boolean byItself) {
    last = nanos.getAsLong();
    talks |= byItself;
  }

  synchronized boolean isGone() {
    long away = TimeUnit.NANOSECONDS.toSeconds(nanos.getAsLong() - last);
    return away > (talks ? GONE_SECONDS : SILENT_SECONDS);
  }
}
