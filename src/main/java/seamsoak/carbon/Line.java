package seamsoak.carbon;

/**
 * A white line as it is in the metal, wt% of the seam's steel at equal activity.
 *
 * @param steel the seam's steel
 * @param seamPct carbon at the seam
 * @param farPct the highest carbon to either side of it, of the side that has less
 * @param metres width of the zone in which more than half of the difference is missing, both sides
 *     of the seam, square to it
 * @param dipPct carbon missing at the seam against the metal half-way to the next seams evened out;
 *     kept for comparison, decides nothing
 */
public record Line(Metal steel, double seamPct, double farPct, double metres, double dipPct) {

  /** The line at a seam of a strip. */
  public static Line of(Strip strip, Plane plane) {
    return new StripLines(strip).at(plane);
  }

  /** Carbon missing at the seam, wt%. */
  public double depthPct() {
    return farPct - seamPct;
  }
}
