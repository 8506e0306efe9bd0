package seamsoak.steel;

import seamsoak.source.Standing;

/**
 * A treatment on which the published sheets of a grade disagree, or which they all forbid.
 *
 * @param matter such as {@code normalizing}
 * @param never whether it is forbidden rather than disputed
 * @param one what one side says
 * @param other what the other says, blank when forbidden
 * @param source key of the source
 * @param standing how well it is known
 */
public record Dispute(
    String matter, boolean never, String one, String other, String source, Standing standing) {
  /** The matter that decides how a schedule begins. */
  private static final String NORMALIZING = "normalizing";

  public boolean ofNormalizing() {
    return matter.equals(NORMALIZING);
  }
}
