package seamsoak.state;

import java.util.List;
import seamsoak.carbon.SeamName;

/**
 * Seams that are told together.
 *
 * @param made what lies against each other there, and the step that laid it so
 * @param way how it lies
 * @param steels of the layers that lie there; none where pieces or tiles do
 */
public record Joints(SeamName made, Way way, List<String> steels) {
  /** How what is joined lies. */
  public enum Way {
    /** Layers of two steels. */
    UNLIKE,
    /** Layers of one steel. */
    LIKE,
    SIDE_BY_SIDE,
    ONE_ON_ANOTHER,
    /** Tiles, one after another. */
    IN_A_ROW
  }
}
