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

  /**
   * Metal on one side of the seam in which more than half the dip of that side is missing, m.
   * Summed, and not read where the profile first crosses it: carbide left in a single cell at the
   * bound of a layer does not end a line.
   */
  private static double side(Strip strip, EvenCarbon even, int from, int way) {
    double half = 0.5 * dip(strip, even, from);
    if (half <= 0) {
      return 0;
    }
    double sum = 0;
    double reach = 0.5 * strip.metres(from);
    double above = half;
    for (int i = from; i >= 0 && i < strip.cells(); i += way) {
      double next = dip(strip, even, i) - half;
      sum += reach * share(above, next);
      above = next;
      boolean last = i + way < 0 || i + way >= strip.cells();
      reach = 0.5 * strip.metres(i) + (last ? 0 : 0.5 * strip.metres(i + way));
    }
    return sum + (above > 0 ? reach : 0);
  }

  /** Share of a stretch along which what runs straight from one value to another is above zero. */
  private static double share(double first, double second) {
    if (first > 0 && second > 0) {
      return 1;
    }
    return first <= 0 && second <= 0 ? 0 : Math.max(first, second) / Math.abs(first - second);
  }
}
