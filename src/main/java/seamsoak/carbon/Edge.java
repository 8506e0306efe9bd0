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

  public Edge {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("an edge is open by a share from 0 to 1, not " + share);
    }
  }
}
