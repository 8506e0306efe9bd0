package seamsoak.schedule.demand;

/**
 * How a piece comes down from above the critical range.
 *
 * @param way to cool
 * @param change how a kiln holds it until all has changed
 */
public record Down(Way way, Change change) {
  /** Ways to cool. */
  public enum Way {
    STILL_AIR,
    /** In ash or vermiculite, for want of a kiln. */
    BURIED,
    /** With the kiln that it was heated in. */
    FALLS_IN_KILN,
    /** From the fire into a kiln that waits at the lower heat. */
    INTO_KILN
  }

  /** Whether a kiln holds it on its way. */
  public boolean inKiln() {
    return switch (way) {
      case STILL_AIR, BURIED -> false;
      case FALLS_IN_KILN, INTO_KILN -> true;
    };
  }
}
