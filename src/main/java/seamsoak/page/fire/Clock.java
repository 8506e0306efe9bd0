package seamsoak.page.fire;

/** What time it is, twice: as the computer tells it, and by a count that nobody sets. */
public interface Clock {
  Clock SYSTEM =
      new Clock() {
        @Override
        public long millis() {
          return System.currentTimeMillis();
        }

        @Override
        public long nanos() {
          return System.nanoTime();
        }
      };

  /** Of the day; goes on while the computer sleeps, and may be set. */
  long millis();

  /** Since whenever; is never set, and may stand still while the computer sleeps. */
  long nanos();
}
