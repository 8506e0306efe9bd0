package seamsoak.carbon;

/**
 * The metal about one seam.
 *
 * @param face where the seam lies
 * @param from first cell after the seam before it, or of the strip
 * @param to last cell before the seam after it, or of the strip, exclusive
 * @param seamBefore whether a seam lies before that first cell
 * @param seamAfter whether a seam lies after that last one
 */
public record LineBounds(int face, int from, int to, boolean seamBefore, boolean seamAfter) {
  /** Of a seam of a strip. */
  public static LineBounds of(Strip strip, Plane plane) {
    int at = strip.planes().indexOf(plane);
    boolean before = at > 0;
    boolean after = at + 1 < strip.planes().size();
    return new LineBounds(
        plane.face(),
        before ? strip.planes().get(at - 1).face() : 0,
        after ? strip.planes().get(at + 1).face() : strip.cells(),
        before,
        after);
  }

  /** Metal on the near side that is nearer to this seam than to the one before, m. */
  public double nearMetres(Strip strip) {
    double whole = strip.metres(from, face);
    return seamBefore ? whole / 2 : whole;
  }

  /** The same on the far side. */
  public double farMetres(Strip strip) {
    double whole = strip.metres(face, to);
    return seamAfter ? whole / 2 : whole;
  }
}
