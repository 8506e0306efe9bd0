package seamsoak.page;

import java.util.concurrent.TimeUnit;

/** Rung whenever something is otherwise, so that whoever holds an answer looks once more. */
final class Bell {
  private long rung;

  synchronized void ring() {
    rung++;
    notifyAll();
  }

  /** How often it was rung: to be asked before one looks, so that nothing is missed meanwhile. */
  synchronized long rung() {
    return rung;
  }

  /** Waits until it has been rung more often than that, or for a time. */
  synchronized void await(long heard, long nanos) throws InterruptedException {
    long end = System.nanoTime() + nanos;
    long left = nanos;
    while (rung == heard && left > 0) {
      TimeUnit.NANOSECONDS.timedWait(this, left);
      left = end - System.nanoTime();
    }
  }
}
