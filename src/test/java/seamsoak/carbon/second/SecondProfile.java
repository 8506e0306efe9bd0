package seamsoak.carbon.second;

import java.util.ArrayList;
import java.util.List;

/** Carbon by depth, with a limited straight piece in each cell. */
final class SecondProfile {
  /** A cell of a layer: its thickness, its mean carbon. */
  record Cell(int layer, double metres, double ratio) {}

  private final List<Cell> cells;
  private final double[] face;
  private final double[] sum;
  private final double[] slope;

  SecondProfile(List<Cell> cells) {
    this.cells = new ArrayList<>(cells);
    int n = cells.size();
    face = new double[n + 1];
    sum = new double[n + 1];
    slope = new double[n];
    for (int i = 0; i < n; i++) {
      Cell c = cells.get(i);
      face[i + 1] = face[i] + c.metres();
      sum[i + 1] = sum[i] + c.metres() * c.ratio();
      double left = steepness(i - 1, i);
      double right = steepness(i, i + 1);
      left = Double.isNaN(left) ? right : left;
      right = Double.isNaN(right) ? left : right;
      slope[i] = left * right > 0 ? Math.signum(left) * Math.min(abs(left), abs(right)) : 0;
    }
  }

  private static double abs(double x) {
    return Math.abs(x);
  }

  private double steepness(int i, int j) {
    if (i < 0 || j == cells.size() || cells.get(i).layer() != cells.get(j).layer()) {
      return Double.NaN;
    }
    Cell a = cells.get(i);
    Cell b = cells.get(j);
    return (b.ratio() - a.ratio()) / (0.5 * (a.metres() + b.metres()));
  }

  double metres() {
    return face[face.length - 1];
  }

  /** Carbon from the face down to a depth, metres times atoms per metal atom. */
  double carbonTo(double depth) {
    int i = 0;
    while (i < cells.size() - 1 && face[i + 1] < depth) {
      i++;
    }
    double in = Math.min(depth, face[i + 1]) - face[i];
    double start = cells.get(i).ratio() - slope[i] * 0.5 * cells.get(i).metres();
    return sum[i] + in * start + 0.5 * slope[i] * in * in;
  }
}
