package seamsoak.plane;

import java.util.ArrayList;
import java.util.List;

/**
 * How fine the cells are. At a line a cell is as thin as what has spread there asks; away from it
 * cells grow.
 *
 * @param finestMetres at outer faces and new seams, m
 * @param spreadShare cell at an older line over the square root of its diffusion time
 * @param growth how much longer a cell is per metre away from a line
 * @param coarsestMetres nowhere longer, m
 * @param leastCells in each block
 * @param steps of time in each heat
 */
record Mesh(
    double finestMetres,
    double spreadShare,
    double growth,
    double coarsestMetres,
    int leastCells,
    int steps) {
  /** For a test at every build. */
  static final Mesh USUAL = new Mesh(40e-6, 0.12, 0.20, 0.8e-3, 2, 30);

  /** Cells at faces half as long, twice the steps. */
  static final Mesh FINE = new Mesh(20e-6, 0.08, 0.15, 0.6e-3, 3, 60);

  /** And again: for values that are stored. */
  static final Mesh FINEST = new Mesh(10e-6, 0.04, 0.10, 0.4e-3, 4, 120);

  Mesh withSteps(int count) {
    return new Mesh(finestMetres, spreadShare, growth, coarsestMetres, leastCells, count);
  }

  /** Below an outer face cells stay thin as deep as scale will eat in one heat, m. */
  private static final double EATEN = 0.25e-3;

  /** The same lines with fresh cells. */
  Axis cells(Axis old) {
    double[] at = old.linePositions();
    List<Double> widths = new ArrayList<>();
    int[] faces = new int[at.length];
    for (int b = 0; b < old.blocks(); b++) {
      addBlock(old, at, at[b], at[b + 1], widths);
      faces[b + 1] = widths.size();
    }
    double[] width = widths.stream().mapToDouble(w -> w).toArray();
    return new Axis(width, faces, old.line(), old.ring());
  }

  private void addBlock(Axis axis, double[] at, double from, double to, List<Double> widths) {
    int parts = (int) Math.max(40, Math.ceil((to - from) / (0.25 * finestMetres)));
    double part = (to - from) / parts;
    double[] cells = new double[parts + 1];
    for (int i = 0; i < parts; i++) {
      cells[i + 1] = cells[i] + part / size(axis, at, from + (i + 0.5) * part);
    }
    int least = to - from < finestMetres ? 1 : leastCells;
    int n = (int) Math.max(least, Math.ceil(cells[parts]));
    double before = 0;
    int i = 0;
    for (int k = 1; k <= n; k++) {
      double wanted = cells[parts] * k / n;
      while (i < parts - 1 && cells[i + 1] < wanted) {
        i++;
      }
      double x = k == n ? to - from : part * (i + (wanted - cells[i]) / (cells[i + 1] - cells[i]));
      widths.add(x - before);
      before = x;
    }
  }

  private double size(Axis axis, double[] at, double x) {
    double size = coarsestMetres;
    double whole = at[at.length - 1];
    for (int k = 0; k < at.length; k++) {
      Line line = axis.line()[k];
      double away = Math.abs(x - at[k]);
      if (axis.ring()) {
        away = Math.min(away, whole - away);
      }
      double here = Math.max(finestMetres, spreadShare * Math.sqrt(line.spread()));
      size = Math.min(size, here + growth * Math.max(0, line.outside() ? away - EATEN : away));
    }
    return size;
  }
}
