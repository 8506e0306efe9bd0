package seamsoak.plane;

import java.util.Arrays;
import java.util.function.UnaryOperator;

/**
 * A cross-section: cells over two axes, a metal for each pair of blocks, carbon per metal atom in
 * each cell (across first). The arrays are never written to after making.
 *
 * @param across the axis along the width
 * @param up the axis along the thickness
 * @param metal by block across, then up
 * @param ratio carbon of the cell i across and j up at j * cells across + i
 */
record Plate(Axis across, Axis up, PlaneMetal[][] metal, double[] ratio) {
  /** One metal with its own carbon. */
  static Plate of(PlaneMetal metal, Axis across, Axis up) {
    double[] ratio = new double[across.cells() * up.cells()];
    Arrays.fill(ratio, metal.startRatio());
    PlaneMetal[][] blocks = new PlaneMetal[across.blocks()][up.blocks()];
    for (PlaneMetal[] column : blocks) {
      Arrays.fill(column, metal);
    }
    return new Plate(across, up, blocks, ratio);
  }

  double at(int i, int j) {
    return ratio[j * across.cells() + i];
  }

  PlaneMetal metalOf(int i, int j) {
    return metal[across.blockOf(i)][up.blockOf(j)];
  }

  /** Carbon in all of it, square metres times atoms per metal atom. */
  double carbon() {
    double sum = 0;
    for (int j = 0; j < up.cells(); j++) {
      for (int i = 0; i < across.cells(); i++) {
        sum += at(i, j) * across.width()[i] * up.width()[j];
      }
    }
    return sum;
  }

  Plate scaled(double acrossFactor, double upFactor) {
    return new Plate(across.scaled(acrossFactor), up.scaled(upFactor), metal, ratio);
  }

  Plate withLines(UnaryOperator<Line> change) {
    return new Plate(across.withLines(change), up.withLines(change), metal, ratio);
  }

  /** Width and thickness exchanged: the mirror image on the diagonal. */
  Plate exchanged() {
    int n = across.cells();
    int m = up.cells();
    double[] next = new double[ratio.length];
    for (int j = 0; j < m; j++) {
      for (int i = 0; i < n; i++) {
        next[i * m + j] = ratio[j * n + i];
      }
    }
    PlaneMetal[][] blocks = new PlaneMetal[up.blocks()][across.blocks()];
    for (int a = 0; a < across.blocks(); a++) {
      for (int b = 0; b < up.blocks(); b++) {
        blocks[b][a] = metal[a][b];
      }
    }
    return new Plate(up, across, blocks, next);
  }

  /** Left and right exchanged. */
  Plate reversed() {
    int n = across.cells();
    double[] next = new double[ratio.length];
    for (int c = 0; c < next.length; c++) {
      int i = c % n;
      next[c] = ratio[c - i + n - 1 - i];
    }
    PlaneMetal[][] blocks = new PlaneMetal[metal.length][];
    for (int a = 0; a < blocks.length; a++) {
      blocks[a] = metal[blocks.length - 1 - a];
    }
    return new Plate(across.reversed(), up, blocks, next);
  }

  /** A quarter turn: what was right is now on top. */
  Plate turned() {
    return exchanged().reversed();
  }

  /** This one on the left of another on the same cells up. */
  Plate beside(Plate right, Line joint) {
    int n = across.cells();
    int k = right.across.cells();
    double[] next = new double[ratio.length + right.ratio.length];
    for (int j = 0; j < up.cells(); j++) {
      System.arraycopy(ratio, j * n, next, j * (n + k), n);
      System.arraycopy(right.ratio, j * k, next, j * (n + k) + n, k);
    }
    PlaneMetal[][] blocks = Arrays.copyOf(metal, metal.length + right.metal.length);
    System.arraycopy(right.metal, 0, blocks, metal.length, right.metal.length);
    return new Plate(across.followedBy(right.across, joint), up, blocks, next);
  }

  /** The whole of which this is the right half. */
  Plate mirrored() {
    return reversed().beside(this, Line.MIDDLE);
  }

  Plate closedUp(Line joint) {
    return new Plate(across, up.closed(joint), metal, ratio);
  }

  /** With the same carbon on cells of which the lines include this one's. */
  Plate onto(Axis newAcross, Axis newUp) {
    return ontoAcross(newAcross).exchanged().ontoAcross(newUp).exchanged();
  }

  private Plate ontoAcross(Axis next) {
    Remap remap = new Remap(across, next);
    int n = across.cells();
    int k = next.cells();
    double[] carbon = new double[k * up.cells()];
    for (int j = 0; j < up.cells(); j++) {
      double[] row = remap.of(Arrays.copyOfRange(ratio, j * n, (j + 1) * n));
      System.arraycopy(row, 0, carbon, j * k, k);
    }
    double[] at = next.linePositions();
    double scale = across.metres() / next.metres();
    PlaneMetal[][] blocks = new PlaneMetal[next.blocks()][];
    for (int b = 0; b < blocks.length; b++) {
      blocks[b] = metal[across.blockOf(across.cellAt(scale * 0.5 * (at[b] + at[b + 1])))];
    }
    return new Plate(next, up, blocks, carbon);
  }

  Plate meshed(Mesh mesh) {
    return onto(mesh.cells(across), mesh.cells(up));
  }

  /** The leftmost cells made one. */
  Plate merged() {
    int n = across.cells();
    double first = across.width()[0] / (across.width()[0] + across.width()[1]);
    double[] next = new double[(n - 1) * up.cells()];
    for (int j = 0; j < up.cells(); j++) {
      System.arraycopy(ratio, j * n + 1, next, j * (n - 1), n - 1);
      next[j * (n - 1)] = first * at(0, j) + (1 - first) * at(1, j);
    }
    return new Plate(across.merged(), up, metal, next);
  }

  /** What is left when a depth is ground off the left. */
  Plate ground(double metres) {
    int n = across.cells();
    double[] at = across.positions();
    int cell = across.cellAt(metres);
    Axis left = across.without(cell).withWidth(0, at[cell + 1] - metres);
    int k = left.cells();
    double[] next = new double[k * up.cells()];
    for (int j = 0; j < up.cells(); j++) {
      System.arraycopy(ratio, j * n + cell, next, j * k, k);
      boolean last = cell == n - 1 || across.blockOf(cell) != across.blockOf(cell + 1);
      if (!last) {
        // the part kept lies deeper than the middle of the cell that was cut
        double apart = 0.5 * (across.width()[cell] + across.width()[cell + 1]);
        double deeper = 0.5 * (metres - at[cell]);
        next[j * k] += (at(cell + 1, j) - at(cell, j)) * deeper / apart;
      }
    }
    PlaneMetal[][] blocks = Arrays.copyOfRange(metal, metal.length - left.blocks(), metal.length);
    return new Plate(left, up, blocks, next);
  }
}
