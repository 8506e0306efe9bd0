package seamsoak.billet;

import java.util.Optional;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/**
 * What the smith allows for the soak that is to be found.
 *
 * @param most the longest that would be held, if stated
 * @param outside what the outer faces meet, if stated
 * @param highest the hottest that would be used, if stated
 */
public record SoakWish(
    Optional<TimeSpan> most, Optional<Exposure> outside, Optional<Temperature> highest) {
  /** The longest soak stated, or the default. */
  public TimeSpan mostTaken() {
    return most.orElse(Defaults.MOST_SOAK);
  }

  /** The exposure stated, or the default. */
  public Exposure outsideTaken() {
    return outside.orElse(Defaults.SOAK_OUTSIDE);
  }
}
