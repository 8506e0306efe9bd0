package seamsoak.numeric;

/**
 * A chain of cells whose contents change only by what crosses their faces: {@code d(size_i y_i)/dt
 * = flux_i - flux_(i+1)}, where {@code flux_i} crosses the face between cells i-1 and i and depends
 * on these two cells only.
 */
public interface ConservativeSystem {
  /** Number of cells. */
  int cells();

  /** Announces a step; what the system holds fixed within a step it settles now. */
  void beginStep(double startSeconds, double endSeconds);

  /** Sets the time for which the next calls are meant. */
  void moveTo(double seconds);

  /** Sizes of all cells at the time set. */
  void sizes(double[] into);

  /**
   * Fluxes through all faces, first face to last, at the time set, and their derivatives.
   *
   * @param y contents per size, one per cell
   * @param flux receives cells + 1 fluxes, positive towards higher indices
   * @param byLeft receives the derivative of each flux by the cell left of the face
   * @param byRight receives the derivative of each flux by the cell right of the face
   */
  void fluxes(double[] y, double[] flux, double[] byLeft, double[] byRight);

  /**
   * Makes the fluxes and derivatives at the end of one step those at the start of the next, or of
   * another try: what hangs on the step itself is changed, at the time set.
   */
  default void carryOn(double[] y, double[] flux, double[] byLeft, double[] byRight) {}

  /** The largest of the cells' changes over the smallest that matters at y; NaN where one is. */
  double largest(double[] change, double[] y);

  /**
   * Shortens a correction to where the fluxes bend: a cell that would pass a bend stops just beyond
   * it, so that the next correction knows the slope there. Without it corrections can go back and
   * forth across a bend forever.
   *
   * @param from contents per size before the correction
   * @param to those after it, which are changed
   * @return whether any cell was stopped
   */
  default boolean stopAtBends(double[] from, double[] to) {
    return false;
  }
}
