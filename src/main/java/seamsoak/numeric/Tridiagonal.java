package seamsoak.numeric;

/**
 * A linear system with three diagonals, solved without pivoting. Rows are eliminated from both ends
 * at once until they meet in the middle: each waits for the one before it, but the two ends do not
 * wait for each other. The diagonal must dominate, as it does for diffusion.
 */
public final class Tridiagonal {
  /** Of {@code below x[i-1] + diagonal x[i] + above x[i+1] = right}, one entry for each row. */
  final double[] below;

  final double[] diagonal;
  final double[] above;
  final double[] right;

  /** The solution, once asked for. */
  final double[] x;

  private final int middle;
  private final double[] inverse;

  /** What a row takes from the solution of the next one nearer to the middle. */
  private final double[] inward;

  public Tridiagonal(int rows) {
    below = new double[rows];
    diagonal = new double[rows];
    above = new double[rows];
    right = new double[rows];
    x = new double[rows];
    inverse = new double[rows];
    inward = new double[rows];
    middle = rows / 2;
  }

  /** Sets one row. */
  public void row(int i, double b, double d, double a, double r) {
    below[i] = b;
    diagonal[i] = d;
    above[i] = a;
    right[i] = r;
  }

  /** The solution of the rows that were set. */
  public double[] solved() {
    factor();
    solve();
    return x;
  }

  /** Takes the matrix as it stands; what lies outside it is left out. */
  void factor() {
    double[] a = above;
    double[] b = below;
    double[] d = diagonal;
    double[] inv = inverse;
    double[] in = inward;
    int n = d.length;
    double top = 0;
    double end = 0;
    int j = n - 1;
    for (int i = 0; i < middle; i++) {
      double pivot = 1 / (d[i] - b[i] * top);
      inv[i] = pivot;
      top = a[i] * pivot;
      in[i] = top;
      if (j > middle) {
        double other = 1 / (d[j] - a[j] * end);
        inv[j] = other;
        end = b[j] * other;
        in[j] = end;
        j--;
      }
    }
    inv[middle] = 1 / (d[middle] - b[middle] * top - a[middle] * end);
  }

  /** Solves for the right-hand side as it stands, by the matrix taken last. */
  void solve() {
    double[] a = above;
    double[] b = below;
    double[] r = right;
    double[] inv = inverse;
    double[] in = inward;
    double[] s = x;
    int n = r.length;
    double top = 0;
    double end = 0;
    int j = n - 1;
    for (int i = 0; i < middle; i++) {
      top = (r[i] - b[i] * top) * inv[i];
      s[i] = top;
      if (j > middle) {
        end = (r[j] - a[j] * end) * inv[j];
        s[j] = end;
        j--;
      }
    }
    top = (r[middle] - b[middle] * top - a[middle] * end) * inv[middle];
    s[middle] = top;
    end = top;
    j = middle + 1;
    for (int i = middle - 1; i >= 0; i--) {
      top = s[i] - in[i] * top;
      s[i] = top;
      if (j < n) {
        end = s[j] - in[j] * end;
        s[j] = end;
        j++;
      }
    }
  }
}
