package seamsoak.carbon;

/**
 * What happens at a strip's near edge during a heat.
 *
 * @param share how open it is: 1 bare to the fire, 0 sealed (no carbon crosses, no scale grows),
 *     between them covered by flux, oil, paint or a closed gap
 */
public record Edge(double share) {
  public static final Edge OPEN = new Edge(1);
  public static final Edge SEALED = new Edge(0);

  /** Written out, since what records bring along is slow the first time. */
  @Override
  public boolean equals(Object o) {
    return o instanceof Edge e && e.share == share;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(share);
  }

  public Edge {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("an edge is open by a share from 0 to 1, not " + share);
    }
  }
}
