package seamsoak.pairing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What one check found.
 *
 * @param name of the check
 * @param title what people read
 * @param rating by its limits
 * @param first value of the first steel; of a range its middle
 * @param second value of the second
 * @param gap how far the two lie apart; of ranges, 0 where they overlap
 * @param unit of the three
 * @param firstRange the range itself, low and high, where the value is one
 * @param secondRange of the second
 * @param rated what is held against the limits
 * @param watch limit
 * @param clash limit
 * @param reason in words, with its numbers
 * @param source key of the source of the limits
 * @param standing of the limits
 */
public record Finding(
    String name,
    String title,
    Rating rating,
    double first,
    double second,
    double gap,
    String unit,
    List<Double> firstRange,
    List<Double> secondRange,
    double rated,
    OptionalDouble watch,
    OptionalDouble clash,
    String reason,
    String source,
    String standing) {
  public Finding {
    firstRange = List.copyOf(firstRange);
    secondRange = List.copyOf(secondRange);
  }

  /** The same found of a steel that is paired with itself: nothing for the pair to decide. */
  Finding alone() {
    return new Finding(
        name,
        title,
        Rating.FITS,
        first,
        second,
        gap,
        unit,
        firstRange,
        secondRange,
        rated,
        watch,
        clash,
        reason,
        source,
        standing);
  }
}
