package seamsoak.state;

import java.util.concurrent.CancellationException;

/** Hears how far a long computation has come. */
public interface Progress {
  /** Hears nothing. */
  Progress NONE = (what, done, of) -> {};

  /**
   * @param what is being done
   * @param done parts finished
   * @param of parts in all
   */
  void at(String what, int done, int of);

  /** Whether nobody waits for it any more. */
  default boolean isStopped() {
    return false;
  }

  /** Ends what nobody waits for any more, by a {@code CancellationException}. */
  default void requireWanted() {
    if (isStopped()) {
      throw new CancellationException();
    }
  }
}
