package seamsoak.plane;

/**
 * Carbon from one set of cells to another along one axis: a straight piece in each cell, within
 * each block on its own, so that nothing crosses a line and nothing is lost.
 */
final class Remap {
  private final Axis from;
  private final Axis to;
  private final double[] fromAt;
  private final double[] toAt;
  private final double[] slope;

  /**
   * @param to as long as the other, with the same lines or more
   */
  Remap(Axis from, Axis to) {
    this.from = from;
    this.to = to;
    this.fromAt = from.positions();
    this.toAt = to.positions();
    this.slope = new double[from.cells()];
    double scale = fromAt[from.cells()] / toAt[to.cells()];
    if (Math.abs(scale - 1) > 1e-6) {
      throw new IllegalArgumentException("sections that are not as long: " + scale);
    }
    for (int i = 0; i < toAt.length; i++) {
      toAt[i] *= scale;
    }
  }

  /** Mean of each new cell. */
  double[] of(double[] old) {
    for (int b = 0; b < from.blocks(); b++) {
      slopes(old, from.face()[b], from.face()[b + 1]);
    }
    double[] next = new double[to.cells()];
    int i = 0;
    for (int k = 0; k < next.length; k++) {
      double sum = 0;
      double a = toAt[k];
      double end = toAt[k + 1];
      // a place on a line, to rounding, is on it
      while (i < old.length - 1 && fromAt[i + 1] <= a + 1e-12) {
        i++;
      }
      int c = i;
      while (true) {
        double b = c == old.length - 1 ? end : Math.min(end, fromAt[c + 1]);
        double middle = fromAt[c] + 0.5 * from.width()[c];
        sum += (b - a) * (old[c] + slope[c] * (0.5 * (a + b) - middle));
        a = b;
        if (end - b <= 1e-12) {
          break;
        }
        c++;
      }
      next[k] = sum / (end - toAt[k]);
    }
    return next;
  }

  private void slopes(double[] y, int start, int end) {
    double[] w = from.width();
    for (int i = start; i < end; i++) {
      double left = i == start ? Double.NaN : 2 * (y[i] - y[i - 1]) / (w[i] + w[i - 1]);
      double right = i == end - 1 ? Double.NaN : 2 * (y[i + 1] - y[i]) / (w[i] + w[i + 1]);
      if (i == start || i == end - 1) {
        slope[i] = i == start ? (i == end - 1 ? 0 : right) : left;
      } else {
        double whole = 2 * w[i] + w[i - 1] + w[i + 1];
        slope[i] = (left * (w[i] + w[i + 1]) + right * (w[i] + w[i - 1])) / whole;
      }
    }
  }
}
