package seamsoak.carbon;

/**
 * A white line as it is in the metal: how much carbon is missing at a seam and over what width.
 *
 * @param dipPct carbon that the steel would have there evened out less what it has, wt%, at least 0
 * @param metres width of the zone in which more than half of that is missing, both sides of the
 *     seam, square to it
 */
public record Line(double dipPct, double metres) {
  /** Temperature at which strips are evened out for the comparison: all austenite, K. */
  private static final double EVENED_AT_KELVIN = 1373.15;

  /** The line at a strip's plane of interest. */
  public static Line of(Strip strip) {
    return of(strip, evened(strip));
  }

  /** What a strip is compared with; the same while nothing leaves it. */
  public static EvenCarbon evened(Strip strip) {
    return new EvenCarbon(strip, EVENED_AT_KELVIN);
  }

  /** The line at a strip's plane of interest, its carbon evened out being known. */
  public static Line of(Strip strip, EvenCarbon even) {
    int seam = strip.seam();
    if (seam == 0) {
      double dip = dip(strip, even, 0);
      return dip <= 0 ? new Line(0, 0) : new Line(dip, 2 * side(strip, even, 0, 1));
    }
    double left = dip(strip, even, seam - 1);
    double right = dip(strip, even, seam);
    double dip = 0.5 * (left + right);
    if (dip <= 0) {
      return new Line(0, 0);
    }
    return new Line(dip, side(strip, even, seam - 1, -1) + side(strip, even, seam, 1));
  }

  private static double dip(Strip strip, EvenCarbon even, int cell) {
    return even.percent(cell) - strip.percent(cell);
  }

  /** From the seam to where half the dip on that side is made good, m. */
  private static double side(Strip strip, EvenCarbon even, int from, int way) {
    double half = 0.5 * dip(strip, even, from);
    double before = 0;
    double missingBefore = 2 * half;
    double x = 0;
    for (int i = from; i >= 0 && i < strip.cells(); i += way) {
      double middle = x + 0.5 * strip.metres(i);
      double missing = dip(strip, even, i);
      if (missing <= half) {
        return half <= 0 || missing == missingBefore
            ? before
            : before + (middle - before) * (missingBefore - half) / (missingBefore - missing);
      }
      before = middle;
      missingBefore = missing;
      x += strip.metres(i);
    }
    return x;
  }
}
