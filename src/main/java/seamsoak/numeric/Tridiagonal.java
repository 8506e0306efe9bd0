package seamsoak.numeric;

/** Linear systems with three diagonals, solved without pivoting (Thomas). */
public final class Tridiagonal {
  private Tridiagonal() {}

  /**
   * Solves {@code lower[i] x[i-1] + diagonal[i] x[i] + upper[i] x[i+1] = right[i]}. The diagonal
   * must dominate, as it does for diffusion. Overwrites {@code diagonal} and {@code right}; the
   * answer stands in {@code right}.
   *
   * @param lower below the diagonal, entry 0 unused
   * @param diagonal the diagonal
   * @param upper above the diagonal, last entry unused
   * @param right right-hand side on entry, solution on return
   */
  public static void solve(double[] lower, double[] diagonal, double[] upper, double[] right) {
    int n = right.length;
    // one division per row: the diagonal is kept as its reciprocal
    diagonal[0] = 1 / diagonal[0];
    for (int i = 1; i < n; i++) {
      double factor = lower[i] * diagonal[i - 1];
      diagonal[i] = 1 / (diagonal[i] - factor * upper[i - 1]);
      right[i] -= factor * right[i - 1];
    }
    right[n - 1] *= diagonal[n - 1];
    for (int i = n - 2; i >= 0; i--) {
      right[i] = (right[i] - upper[i] * right[i + 1]) * diagonal[i];
    }
  }
}
