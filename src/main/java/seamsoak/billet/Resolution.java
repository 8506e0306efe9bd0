package seamsoak.billet;

import seamsoak.carbon.Grid;

/**
 * How finely the walk computes.
 *
 * @param finestMetres cell at an edge or seam, m
 * @param growth factor from cell to cell inward
 * @param relativeTolerance error allowed per step
 * @param coarseInside whether layers below the outer face are followed in a few cells each
 */
public record Resolution(
    double finestMetres, double growth, double relativeTolerance, boolean coarseInside) {
  /** For the answer itself. */
  public static final Resolution FINE = new Resolution(6e-6, 1.12, 1e-3, false);

  /** For the many samples of a band. */
  public static final Resolution SAMPLE = new Resolution(40e-6, 1.6, 5e-3, true);

  /** A thin layer still gets some cells. */
  private static final double MOST_SHARE = 0.05;

  /** Grid of a layer, finest at its near end. */
  Grid oneEnd(double metres) {
    return new Grid(Math.min(MOST_SHARE, finestMetres / metres), growth, false);
  }
}
