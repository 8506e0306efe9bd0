package seamsoak.billet;

import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.unit.Length;

/**
 * What the smith saw at the seams after a step.
 *
 * @param seams which kind of seam
 * @param step number of the step that made them; when not stated, the latest of that kind
 * @param line how it looked
 * @param width of the line on the face, if measured
 */
public record Seen(Seams seams, OptionalInt step, Look line, Optional<Length> width) {
  /** The kinds of seam, named for what made them. */
  public enum Seams {
    LAYERS,
    RESTACK,
    TILE;

    /** The kind of step that makes them; none for the stack itself. */
    public Optional<Step.Kind> madeBy() {
      return switch (this) {
        case LAYERS -> Optional.empty();
        case RESTACK -> Optional.of(Step.Kind.RESTACK);
        case TILE -> Optional.of(Step.Kind.TILE);
      };
    }
  }

  /** How a line looked. */
  public enum Look {
    NONE,
    FAINT,
    CLEAR
  }
}
