package seamsoak.pairing;

import java.util.OptionalDouble;
import seamsoak.source.Standing;

/**
 * Where one check begins to warn.
 *
 * @param name of the check
 * @param title what people read
 * @param letter stands for the check in a cell of the matrix
 * @param above whether more is worse; else less is
 * @param watch from here on a pair is one to watch; empty when the check never warns
 * @param clash from here on it clashes; empty when it never does
 * @param unit of both
 * @param standing how well the limit is known
 * @param source its key
 * @param order its place in the table, the weightiest first
 */
public record PairLimit(
    String name,
    String title,
    char letter,
    boolean above,
    OptionalDouble watch,
    OptionalDouble clash,
    String unit,
    Standing standing,
    String source,
    int order) {

  /** Whether it never warns: what the check finds is told and no verdict. */
  public boolean silent() {
    return watch.isEmpty() && clash.isEmpty();
  }

  /** The rating of a value. */
  public Rating rate(double value) {
    if (beyond(value, clash)) {
      return Rating.CLASH;
    }
    return beyond(value, watch) ? Rating.WATCH : Rating.FITS;
  }

  /** A value at the limit itself does not warn: a steel that just keeps to it fits. */
  private boolean beyond(double value, OptionalDouble limit) {
    return limit.isPresent() && (above ? value > limit.getAsDouble() : value < limit.getAsDouble());
  }
}
