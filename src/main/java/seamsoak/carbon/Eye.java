package seamsoak.carbon;

import org.apache.commons.numbers.gamma.Erf;

/**
 * An eye on one seam: what it makes of the carbon there, while the cells of the strip stay as thick
 * as they are. Beyond a plane of symmetry the strip goes on as its mirror image; beyond an outer
 * face there is nothing to compare with, and the mirror image stands in for it.
 *
 * <p>It blurs what it looks at over 0.06 mm and compares it with what lies about it, over some 3
 * mm: sensitivity to contrast at 400 mm (J.L. Mannos, D.J. Sakrison, IEEE Trans. Inf. Theory 20
 * (1974) 525; A.B. Watson, A.J. Ahumada, J. Vision 5 (2005) 717; both as read in public code, not
 * in the papers), fitted by two Gaussians: 0.045 to 0.08 and 1.2 to 4.1 mm. The 3 mm are judgement
 * within that range.
 *
 * <p>What counts as all there is, is the highest carbon that both sides come to: a step from rich
 * to poor, between unlike steels or in a skin, is no line; a dip between them is.
 */
public final class Eye {
  /** Standard deviation of what a line is compared with, on the face, m; judgement. */
  public static final double BROAD_METRES = 3e-3;

  /** The same of what it sees as one point. */
  private static final double FINE_METRES = 0.06e-3;

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
   * @param broadMetres what it compares with, on the face
   */
  public Eye(Strip strip, Plane plane, double trace, double broadMetres) {
    steel = SeamSteel.of(strip, plane);
    face = plane.face();
    fine = weights(strip, plane.face(), FINE_METRES / trace);
    broad = weights(strip, plane.face(), broadMetres / trace);
  }

  /** What it makes of the strip as it is now. */
  public Sight on(Strip now) {
    return Sight.of(told(now), fine, broad);
  }

  /** No more than the highest that both sides come to. */
  private double[] told(Strip now) {
    double[] percent = steel.percents(now);
    double most =
        StripLines.most(percent, peak(percent, 0, face), peak(percent, face, percent.length));
    for (int i = 0; i < percent.length; i++) {
      percent[i] = Math.min(percent[i], most);
    }
    return percent;
  }

  /** Where nothing is missing at the seam itself, as on the slope of a skin, there is no line. */
  public Sight on(Strip now, Line line) {
    return line.depthPct() < LEAST_PCT ? Sight.even(line.farPct()) : on(now);
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
