package seamsoak.carbon;

import org.apache.commons.numbers.gamma.Erf;

/**
 * An eye on one seam: what it makes of the carbon there, while the cells of the strip stay as thick
 * as they are. Beyond a plane of symmetry the strip goes on as its mirror image; beyond an outer
 * face there is nothing to compare with, and the mirror image stands in for it.
 *
 * <p>What counts as all there is, is the highest carbon that both sides come to: a step from rich
 * to poor, between unlike steels or in a skin, is no line; a dip between them is.
 */
public final class Eye {
  /** Less than that missing is no line, wt%. */
  private static final double LEAST_PCT = 0.005;

  /** Standard deviations beyond which nothing counts. */
  private static final double REACH = 5;

  private final SeamSteel steel;
  private final int face;
  private final double[] fine;
  private final double[] broad;

  /**
   * @param trace distances on the shown face over true ones, finite
   */
  public Eye(Strip strip, Plane plane, double trace, LineVisibility visibility) {
    steel = SeamSteel.of(strip, plane);
    face = plane.face();
    fine = weights(strip, plane.face(), LineVisibility.FINE_METRES / trace);
    broad = weights(strip, plane.face(), visibility.broadMetres() / trace);
  }

  /** What it makes of the strip as it is now. */
  public Contrast on(Strip now) {
    double[] percent = steel.percents(now);
    double most =
        StripLines.most(percent, peak(percent, 0, face), peak(percent, face, percent.length));
    double f = 0;
    double b = 0;
    for (int i = 0; i < percent.length; i++) {
      double c = Math.min(percent[i], most);
      f += fine[i] * c;
      b += broad[i] * c;
    }
    return new Contrast(f, b);
  }

  /** Where nothing is missing at the seam itself, as on the slope of a skin, there is no line. */
  public Contrast on(Strip now, Line line) {
    Contrast seen = on(now);
    return line.depthPct() < LEAST_PCT ? new Contrast(seen.broadPct(), seen.broadPct()) : seen;
  }

  /** -1 where there is none. */
  private static int peak(double[] percent, int from, int to) {
    int best = -1;
    for (int i = from; i < to; i++) {
      best = best < 0 || percent[i] > percent[best] ? i : best;
    }
    return best;
  }

  /** Weight of each cell in a Gaussian mean about a face. */
  static double[] weights(Strip strip, int face, double sigmaMetres) {
    double[] weights = new double[strip.cells()];
    walk(strip, weights, face, 1, sigmaMetres);
    walk(strip, weights, face, -1, sigmaMetres);
    double sum = Sums.of(weights);
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  /** Outward to one side, turning back at the ends of the strip. */
  private static void walk(
      Strip strip, double[] weights, int face, int towards, double sigmaMetres) {
    int way = towards;
    int cell = way > 0 ? face : face - 1;
    double x = 0;
    double before = 0;
    while (x < REACH * sigmaMetres) {
      if (cell < 0 || cell >= weights.length) {
        way = -way;
        cell += way;
      }
      x += strip.metres(cell);
      double here = Erf.value(x / (sigmaMetres * Math.sqrt(2)));
      weights[cell] += here - before;
      before = here;
      cell += way;
    }
  }
}
