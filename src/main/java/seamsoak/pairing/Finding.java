package seamsoak.pairing;

import java.util.Optional;
import seamsoak.steel.TemperatureRange;

/**
 * What one check found.
 *
 * @param check that found it
 * @param limit it is held against
 * @param rating by its limits
 * @param first value of the first steel; of a range its middle
 * @param second value of the second
 * @param gap how far the two lie apart; of ranges, 0 where they overlap
 * @param firstRange the range itself, C, where the value is one
 * @param secondRange of the second
 * @param rated what is held against the limits
 * @param why what the numbers do not tell
 */
public record Finding(
    CheckName check,
    PairLimit limit,
    Rating rating,
    double first,
    double second,
    double gap,
    Optional<TemperatureRange> firstRange,
    Optional<TemperatureRange> secondRange,
    double rated,
    Why why) {

  /** Whether it goes beyond a limit, though it be of a steel with itself. */
  public boolean warns() {
    return limit.rate(rated) != Rating.FITS;
  }

  /** The same found of a steel that is paired with itself: nothing for the pair to decide. */
  Finding alone() {
    return new Finding(
        check, limit, Rating.FITS, first, second, gap, firstRange, secondRange, rated, why);
  }
}
