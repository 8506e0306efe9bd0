package seamsoak.billet;

import seamsoak.carbon.Grid;

/**
 * How finely the walk computes.
 *
 * @param finestMetres cell at an edge or seam, m
 * @param growth factor from cell to cell inward
 * @param relativeTolerance error allowed per step
 * @param thinMetres layers of a bar thinner than that, when it is cut and stacked again, are told
 *     by their mean from then on, m
 */
public record Resolution(
    double finestMetres, double growth, double relativeTolerance, double thinMetres) {
  /** For the answer itself. */
  public static final Resolution FINE = new Resolution(10e-6, 1.15, 2e-3, 0.5e-3);

  /**
   * For the many samples of a band. Beside the fine one, seconds to clear come out some 1 to 4 %
   * shorter for a single history, which is set right by that of the likely one.
   */
  public static final Resolution SAMPLE = new Resolution(60e-6, 1.35, 3e-2, 0.5e-3);

  /** A thin layer still gets some cells. */
  private static final double MOST_SHARE = 0.05;

  /** Between two seams that have come close together a few cells do. */
  private static final double MOST_SHARE_BETWEEN = 0.15;

  /**
   * Half a line with more seams than that is cut more coarsely between them: no shop has so many.
   */
  private static final int MANY_SEAMS = 64;

  private static final double COARSE_GROWTH = 1.6;
  private static final double COARSE_METRES = 60e-6;

  /** For a line with so many seams. */
  Resolution forSeams(int seams) {
    return seams <= MANY_SEAMS
        ? this
        : new Resolution(
            Math.max(finestMetres, COARSE_METRES),
            Math.max(growth, COARSE_GROWTH),
            relativeTolerance,
            thinMetres);
  }

  /** Grid of a layer, finest at its near end. */
  Grid oneEnd(double metres) {
    return new Grid(Math.min(MOST_SHARE, finestMetres / metres), growth, false);
  }

  /** Cells of a zone of a line, fine at its near end and, where told, at its far one. */
  double[] zone(double metres, boolean farFine) {
    double share = Math.min(MOST_SHARE_BETWEEN, finestMetres / metres);
    return (farFine ? new Grid(share, growth, true) : oneEnd(metres)).cells(metres);
  }
}
