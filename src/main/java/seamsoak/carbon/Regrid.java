package seamsoak.carbon;

/**
 * Lays a new grid over a strip's near layer without losing carbon: a monotone cubic through the
 * carbon summed up to each old face, differenced at the new faces (F.N. Fritsch, R.E. Carlson, SIAM
 * J. Numer. Anal. 17 (1980) 238).
 */
public final class Regrid {
  private Regrid() {}

  /** The strip with its near layer cut anew, finest at the near edge. */
  public static Strip nearLayer(Strip strip, Grid grid) {
    int old = strip.nearLayerCells();
    Strip near = strip.part(0, old);
    double[] x = new double[old + 1];
    double[] sum = new double[old + 1];
    for (int i = 0; i < old; i++) {
      x[i + 1] = x[i] + near.metres(i);
      sum[i + 1] = sum[i] + near.metres(i) * near.ratio(i);
    }
    double[] slope = slopes(x, sum, near);
    double[] cells = grid.cells(x[old]);
    double[] ratio = new double[cells.length];
    double at = 0;
    double before = 0;
    int k = 0;
    for (int i = 0; i < cells.length; i++) {
      at = i == cells.length - 1 ? x[old] : at + cells[i];
      while (k < old - 1 && x[k + 1] < at) {
        k++;
      }
      double here = i == cells.length - 1 ? sum[old] : hermite(x, sum, slope, k, at);
      ratio[i] = (here - before) / cells[i];
      before = here;
    }
    Strip fresh = Strip.of(near.metal(0), cells, ratio);
    Strip whole = old == strip.cells() ? fresh : fresh.followedBy(strip.part(old, strip.cells()));
    return whole.with(whole.thicknesses(), whole.ratios(), strip.scaledMetres());
  }

  /** Slopes at the faces, limited so that the cubic never turns back. */
  private static double[] slopes(double[] x, double[] sum, Strip near) {
    int n = near.cells();
    double[] m = new double[n + 1];
    m[0] = n == 1 ? near.ratio(0) : edge(near, 0, 1);
    m[n] = n == 1 ? near.ratio(0) : edge(near, n - 1, n - 2);
    for (int i = 1; i < n; i++) {
      double hl = x[i] - x[i - 1];
      double hr = x[i + 1] - x[i];
      m[i] = (near.ratio(i - 1) * hr + near.ratio(i) * hl) / (hl + hr);
    }
    for (int i = 0; i < n; i++) {
      double most = 3 * near.ratio(i);
      m[i] = Math.max(0, Math.min(m[i], most));
      m[i + 1] = Math.max(0, Math.min(m[i + 1], most));
    }
    return m;
  }

  private static double edge(Strip near, int end, int next) {
    double gap = 0.5 * (near.metres(end) + near.metres(next));
    return near.ratio(end) + (near.ratio(end) - near.ratio(next)) * 0.5 * near.metres(end) / gap;
  }

  private static double hermite(double[] x, double[] sum, double[] m, int k, double at) {
    double h = x[k + 1] - x[k];
    double t = (at - x[k]) / h;
    double t2 = t * t;
    double t3 = t2 * t;
    return sum[k] * (2 * t3 - 3 * t2 + 1)
        + h * m[k] * (t3 - 2 * t2 + t)
        + sum[k + 1] * (3 * t2 - 2 * t3)
        + h * m[k + 1] * (t3 - t2);
  }
}
