package seamsoak.state;

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
}
