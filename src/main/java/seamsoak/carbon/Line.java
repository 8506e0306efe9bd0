package seamsoak.carbon;

/**
 * A white line as it is in the metal, wt% of the seam's steel at equal activity.
 *
 * @param steel the seam's steel
 * @param seamPct carbon at the seam
 * @param farPct the highest carbon about it, on the side that has less
 * @param metres width of the zone in which more than half of the difference is missing, both sides
 *     of the seam, square to it
 * @param dipPct carbon missing at the seam against the metal half-way to the next seams evened out;
 *     kept for comparison, decides nothing
 */
public record Line(Metal steel, double seamPct, double farPct, double metres, double dipPct) {

  /** The line at a seam of a strip. */
  public static Line of(Strip strip, Plane plane) {
    LineBounds bounds = LineBounds.of(strip, plane);
    SeamSteel steel = SeamSteel.of(strip, plane);
    double[] percent = steel.percents(strip);
    double far = bounds.most(percent);
    double seam = Math.min(far, at(strip, percent, plane.face()));
    double width =
        far <= seam
            ? 0
            : side(strip, percent, bounds.face() - 1, bounds.nearEnd(percent), far)
                + side(strip, percent, bounds.face(), bounds.farEnd(percent), far);
    boolean mirrored = plane.face() == 0 || plane.face() == strip.cells();
    return new Line(
        steel.metal(),
        seam,
        far,
        mirrored ? 2 * width : width,
        Math.max(0, even(strip, percent, bounds) - seam));
  }

  /** Carbon missing at the seam, wt%. */
  public double depthPct() {
    return farPct - seamPct;
  }

  private static double at(Strip strip, double[] percent, int face) {
    if (face == 0 || face == percent.length) {
      return percent[Math.min(face, percent.length - 1)];
    }
    // straight between the middles of the two cells
    double left = strip.metres(face - 1);
    double right = strip.metres(face);
    return (percent[face - 1] * right + percent[face] * left) / (left + right);
  }

  /**
   * Metal on one side of the seam in which more than half of what that side lacks is missing, m.
   * Summed, and not read where the profile first crosses it: carbide left in a single cell at the
   * bound of a layer does not end a line.
   */
  private static double side(Strip strip, double[] percent, int from, int end, double far) {
    if (end < 0 || from < 0 || from >= percent.length) {
      return 0;
    }
    int way = end >= from ? 1 : -1;
    double half = 0.5 * (far - percent[from]);
    if (half <= 0) {
      return 0;
    }
    double sum = 0;
    double reach = 0.5 * strip.metres(from);
    double above = half;
    for (int i = from; ; i += way) {
      double next = far - percent[i] - half;
      sum += reach * share(above, next);
      above = next;
      if (i == end) {
        return sum + (above > 0 ? 0.5 * strip.metres(i) : 0);
      }
      reach = 0.5 * (strip.metres(i) + strip.metres(i + way));
    }
  }

  /** Share of a stretch along which what runs straight from one value to another is above zero. */
  private static double share(double first, double second) {
    if (first > 0 && second > 0) {
      return 1;
    }
    return first <= 0 && second <= 0 ? 0 : Math.max(first, second) / Math.abs(first - second);
  }

  /** Mean over the metal half-way to the next seams or, where none follows, to the end. */
  private static double even(Strip strip, double[] percent, LineBounds bounds) {
    double carbon = 0;
    double metres = 0;
    for (int way = -1; way <= 1; way += 2) {
      int end = way < 0 ? bounds.from() - 1 : bounds.to();
      double reach = 0;
      for (int i = way < 0 ? bounds.face() - 1 : bounds.face(); i != end; i += way) {
        reach += strip.metres(i);
      }
      int bound = way < 0 ? bounds.from() : bounds.to();
      boolean seamFollows = strip.planes().stream().anyMatch(p -> p.face() == bound);
      double left = seamFollows ? reach / 2 : reach;
      for (int i = way < 0 ? bounds.face() - 1 : bounds.face(); i != end && left > 0; i += way) {
        double part = Math.min(left, strip.metres(i));
        carbon += part * percent[i];
        metres += part;
        left -= part;
      }
    }
    return metres > 0 ? carbon / metres : percent[Math.min(bounds.face(), percent.length - 1)];
  }
}
