package seamsoak.soak;

/**
 * Why a soak is recommended, or none.
 *
 * @param mostMinutes longest soak allowed
 */
public record SoakReason(Kind kind, double mostMinutes) {
  /** The case. */
  public enum Kind {
    /** No line shows: nothing to clear. */
    NOTHING_SHOWS,
    /** The normalizing and refining cycles to come clear the lines. */
    CYCLES_CLEAR,
    /** The coolest that clears within what is allowed in nine of ten histories. */
    COOLEST_BY_HISTORIES,
    /** The coolest that does by the middle estimate, where there are no histories. */
    COOLEST_BY_MIDDLE,
    /** The hottest, as long as is allowed: it clears by the middle estimate only. */
    HOTTEST_ALLOWED
  }
}
