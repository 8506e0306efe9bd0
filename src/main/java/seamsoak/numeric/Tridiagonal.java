package seamsoak.numeric;

/**
 * A linear system with three diagonals, solved without pivoting (Thomas): rows are eliminated as
 * they come, so that what fills them need not be kept. The diagonal must dominate, as it does for
 * diffusion.
 */
public final class Tridiagonal {
  private final double[] lower;
  private final double[] inverse;
  private final double[] upper;
  private final double[] x;

  public Tridiagonal(int rows) {
    lower = new double[rows];
    inverse = new double[rows];
    upper = new double[rows];
    x = new double[rows];
  }

  /**
   * Takes row i of {@code below x[i-1] + diagonal x[i] + above x[i+1] = right}, rows in order from
   * 0; what lies outside the matrix is left out.
   */
  public void row(int i, double below, double diagonal, double above, double right) {
    double pivot = i == 0 ? 1 / diagonal : 1 / (diagonal - below * upper[i - 1]);
    lower[i] = below;
    inverse[i] = pivot;
    upper[i] = above * pivot;
    x[i] = (i == 0 ? right : right - below * x[i - 1]) * pivot;
  }

  /** The right-hand side of row i anew, rows in order from 0, for the matrix taken last. */
  void right(int i, double right) {
    x[i] = (i == 0 ? right : right - lower[i] * x[i - 1]) * inverse[i];
  }

  /** The solution, once all rows are taken; it stays until the next row is. */
  public double[] solved() {
    for (int i = x.length - 2; i >= 0; i--) {
      x[i] -= upper[i] * x[i + 1];
    }
    return x;
  }
}
