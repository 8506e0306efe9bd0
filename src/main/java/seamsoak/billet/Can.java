package seamsoak.billet;

import java.util.Optional;

/**
 * A box welded shut about the stack.
 *
 * @param inside what else is in it, if stated
 * @param vent whether it has a hole for gas, if stated
 */
public record Can(Optional<Inside> inside, Optional<Vent> vent) {
  /** What a can holds beside the steel. */
  public enum Inside {
    BAKED_DRY,
    DAMP,
    OILY,
    PAINTED,
    UNKNOWN
  }

  /** Whether gas can leave. */
  public enum Vent {
    HOLE,
    NONE,
    UNKNOWN
  }

  /** What is stated, or unknown. */
  public Inside insideTaken() {
    return inside.orElse(Inside.UNKNOWN);
  }

  /** What is stated, or unknown. */
  public Vent ventTaken() {
    return vent.orElse(Vent.UNKNOWN);
  }
}
