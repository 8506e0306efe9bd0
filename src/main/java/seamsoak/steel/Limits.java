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
}
