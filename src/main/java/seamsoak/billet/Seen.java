package seamsoak.billet;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.unit.Length;

/**
 * What the smith saw at the seams after a step.
 *
 * @param where the seams that were looked at
 * @param part of them that was looked at
 * @param across the seams that they cross, where only these were looked at
 * @param line how it looked
 * @param width of the line on the face, if measured
 * @param etched the state it was etched in, if stated
 * @param on which day, if stated
 * @param with what it was etched, if stated
 */
public record Seen(
    Where where,
    Part part,
    Optional<Where> across,
    Look line,
    Optional<Length> width,
    Optional<Etched> etched,
    Optional<LocalDate> on,
    Optional<String> with) {
  /**
   * Seams that one step made.
   *
   * @param seams which kind
   * @param step number of the step; when not stated, the latest of that kind
   * @param lie how they lie, where only those were looked at
   */
  public record Where(Seams seams, OptionalInt step, Optional<Lie> lie) {}

  /** How pieces of a restack lie that a seam joins. */
  public enum Lie {
    SIDE_BY_SIDE,
    ONE_ON_ANOTHER
  }

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

  /** Where on the seams: along them, or where they cross others. */
  public enum Part {
    LINE,
    CROSSING
  }

  /** How a line looked. */
  public enum Look {
    NONE,
    FAINT,
    PLAIN
  }

  /** The state of the steel when it was etched. */
  public enum Etched {
    AS_COOLED,
    ANNEALED,
    HARDENED
  }
}
