package seamsoak.carbon;

/**
 * Which seams are meant: those that one step made.
 *
 * @param kind what lies against each other there
 * @param step number of the step that laid them together, 0 for the stack
 */
public record SeamName(Kind kind, int step) {
  /** Between the layers of the stack. */
  public static final SeamName LAYERS = new SeamName(Kind.LAYERS, 0);

  /** What lies against each other at a seam. */
  public enum Kind {
    /** Layers of the stack. */
    LAYERS,
    /** Pieces of a bar that was cut and stacked again. */
    RESTACK,
    /** Slices of a bar, cut on the bias. */
    TILES
  }

  @Override
  public String toString() {
    return switch (kind) {
      case LAYERS -> "layers";
      case RESTACK -> "restack " + step;
      case TILES -> "tiles " + step;
    };
  }
}
