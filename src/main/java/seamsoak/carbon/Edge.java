package seamsoak.carbon;

/**
 * What happens at a strip's near edge during a heat.
 *
 * @param share how open it is: 1 bare to the fire, 0 sealed (no carbon crosses, no scale grows),
 *     between them covered by flux, oil, paint or a closed gap
 * @param stillAir whether it lies in the still air of a kiln, where scale grows compact
 */
public record Edge(double share, boolean stillAir) {
  public static final Edge OPEN = new Edge(1);
  public static final Edge SEALED = new Edge(0);

  public Edge {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("an edge is open by a share from 0 to 1, not " + share);
    }
  }

  /** In what a flame leaves. */
  public Edge(double share) {
    this(share, false);
  }

  /** The same in a kiln, or in a fire. */
  public Edge inStillAir(boolean kiln) {
    return share == 0 || kiln == stillAir ? this : new Edge(share, kiln);
  }
}
