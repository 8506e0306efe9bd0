package seamsoak.soak;

import java.util.Optional;
import seamsoak.billet.Seen;

/**
 * Why a soak is recommended, or none.
 *
 * @param mostMinutes longest soak allowed
 * @param first the etch to wait for, only if it shows a line to soak; empty: soak at once
 * @param cost of the one recommended, where soaks were weighed
 * @param coolest cost of the coolest that would do, where that is another
 */
public record SoakReason(
    Kind kind,
    double mostMinutes,
    Optional<Seen.Etched> first,
    Optional<SoakCost> cost,
    Optional<SoakCost> coolest) {
  /** Whether other steps come before the etch that decides. */
  public boolean later() {
    return first.filter(e -> e != Seen.Etched.AS_COOLED).isPresent();
  }

  /** The case. */
  public enum Kind {
    /** No line shows: nothing to clear. */
    NOTHING_SHOWS,
    /** The normalizing and refining cycles to come clear the lines. */
    CYCLES_CLEAR,
    /** It costs least of those that clear within what is allowed in nine of ten billets. */
    BALANCED_BY_HISTORIES,
    /** The same by the middle estimate, where there are no histories. */
    BALANCED_BY_MIDDLE,
    /** The same in the likely case, where nothing allowed clears in nine of ten billets. */
    BALANCED_BY_LIKELY,
    /** The same in half of the billets that need a soak, where no line shows in the likely case. */
    BALANCED_BY_HALF,
    /** The hottest, as long as is allowed, where not even half of those are cleared by less. */
    HOTTEST_ALLOWED
  }
}
