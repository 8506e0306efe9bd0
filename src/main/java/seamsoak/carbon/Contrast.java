package seamsoak.carbon;

/**
 * Carbon at a seam as an eye takes it in: blurred to a point, and the broad mean around it that it
 * is compared with, wt% of the seam's steel at equal activity.
 */
public record Contrast(double finePct, double broadPct) {

  /** Carbon that seems to be missing, wt%. */
  public double missingPct() {
    return broadPct - finePct;
  }

  /** K: above 1 the line shows; 0 where nothing is missing. */
  public double over(LineVisibility visibility) {
    return Math.max(0, missingPct()) / visibility.dipPct();
  }

  /** Where there is no carbon to miss. */
  private static final Contrast NONE = new Contrast(0, 0);

  /**
   * Where this seam crosses one of another direction: carbon there is the product of both over the
   * core's, and so are the means of the eye.
   *
   * @param otherCorePct carbon far from both, in the other seam's steel
   */
  public Contrast crossing(Contrast other, double otherCorePct) {
    return otherCorePct > 0
        ? new Contrast(
            finePct * other.finePct / otherCorePct, broadPct * other.broadPct / otherCorePct)
        : NONE;
  }
}
