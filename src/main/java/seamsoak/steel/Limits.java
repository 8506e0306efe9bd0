package seamsoak.steel;

import java.util.OptionalDouble;

/**
 * What a standard allows of one element, weight percent.
 *
 * @param min lower limit, empty when there is none
 * @param max upper limit, empty when there is none
 */
public record Limits(OptionalDouble min, OptionalDouble max) {
  /** No limit on either side. */
  public static final Limits NONE = new Limits(OptionalDouble.empty(), OptionalDouble.empty());

  /** Whether a content keeps to both. */
  public boolean hold(double percent) {
    return percent >= min.orElse(0) && percent <= max.orElse(100);
  }
}
