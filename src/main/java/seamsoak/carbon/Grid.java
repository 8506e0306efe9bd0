package seamsoak.carbon;

/**
 * How a layer is cut into cells: finest at its ends of interest, each next one thicker by a fixed
 * factor.
 *
 * @param finestShare thinnest cell over the layer's thickness
 * @param growth factor from cell to cell, above 1
 * @param bothEnds whether the far end is fine too
 */
public record Grid(double finestShare, double growth, boolean bothEnds) {
  /** Cells of a layer, m, near end first. */
  public double[] cells(double metres) {
    if (bothEnds) {
      double[] half = oneEnd(metres / 2, 2 * finestShare);
      double[] all = new double[2 * half.length];
      for (int i = 0; i < half.length; i++) {
        all[i] = half[i];
        all[all.length - 1 - i] = half[i];
      }
      return all;
    }
    return oneEnd(metres, finestShare);
  }

  private double[] oneEnd(double metres, double share) {
    int n = Math.max(2, (int) Math.ceil(Math.log1p((growth - 1) / share) / Math.log(growth)));
    double[] cells = new double[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      cells[i] = Math.pow(growth, i);
      sum += cells[i];
    }
    for (int i = 0; i < n; i++) {
      cells[i] *= metres / sum;
    }
    return cells;
  }
}
