package seamsoak.plane;

/** All lines of cells along one axis of a plate: fluxes along them, and the implicit factor. */
final class Sweep {
  private final int cells;
  private final int lines;
  private final int stride;
  private final int lineStride;
  private final boolean ring;

  /** Conductance of each face to activity, kept from the first stage, lines after one another. */
  private final double[] kept;

  private final double[] upper;
  private final double[] value;
  private final double[] corner;

  Sweep(int cells, int lines, int stride, int lineStride, boolean ring) {
    this.cells = cells;
    this.lines = lines;
    this.stride = stride;
    this.lineStride = lineStride;
    this.ring = ring;
    kept = new double[lines * (cells + 1)];
    upper = new double[cells];
    value = new double[cells];
    corner = new double[cells];
  }

  /** Adds what flows between cells to their rates; nothing leaves. */
  void fluxes(double[] activity, double[] half, double[] width, boolean keep, double[] to) {
    for (int l = 0; l < lines; l++) {
      int base = l * lineStride;
      int faces = l * (cells + 1);
      if (keep) {
        kept[faces] = 0;
        kept[faces + cells] = 0;
      }
      for (int f = ring ? 0 : 1; f < cells; f++) {
        int i = f == 0 ? cells - 1 : f - 1;
        int a = base + i * stride;
        int b = base + f * stride;
        double g = 1 / (width[i] * half[a] + width[f] * half[b]);
        double flux = g * (activity[a] - activity[b]);
        to[a] -= flux / width[i];
        to[b] += flux / width[f];
        if (keep) {
          kept[faces + f] = g;
          if (f == 0) {
            kept[faces + cells] = g;
          }
        }
      }
    }
  }

  /**
   * Adds what leaves through one end of the lines. Only carbon in excess of what is held there
   * leaves; which lines have it is settled in the first stage and holds for the whole step.
   */
  double through(
      boolean far,
      double[] held,
      int[] kind,
      double[] activity,
      double[] half,
      double[] width,
      double[] depth,
      boolean keep,
      double[] to) {
    int i = far ? cells - 1 : 0;
    double out = 0;
    for (int l = 0; l < lines; l++) {
      int c = l * lineStride + i * stride;
      int face = l * (cells + 1) + (far ? cells : 0);
      double excess = activity[c] - held[kind[c]];
      double g = 1 / (width[i] * half[c]);
      if (keep) {
        kept[face] = excess > 0 ? g : 0;
      }
      if (kept[face] > 0) {
        to[c] -= g * excess / width[i];
        out += g * excess * depth[l];
      }
    }
    return out;
  }

  /**
   * Solves (1 - weight A) x = given in place, A the kept slopes of the fluxes along the lines;
   * returns what the solution lets leave at the ends.
   */
  double solve(double[] x, double[] slope, double[] width, double[] depth, double weight) {
    double out = 0;
    for (int l = 0; l < lines; l++) {
      int base = l * lineStride;
      int faces = l * (cells + 1);
      if (ring) {
        ring(x, slope, width, weight, base, faces);
      } else {
        straight(x, slope, width, weight, base, faces);
        int last = base + (cells - 1) * stride;
        double leaves = kept[faces] * slope[base] * x[base];
        leaves += kept[faces + cells] * slope[last] * x[last];
        out += weight * depth[l] * leaves;
      }
    }
    return out;
  }

  private void straight(
      double[] x, double[] slope, double[] width, double weight, int base, int faces) {
    double before = 0;
    double up = 0;
    for (int i = 0; i < cells; i++) {
      int c = base + i * stride;
      double w = weight / width[i];
      double lower = i == 0 ? 0 : -w * kept[faces + i] * slope[c - stride];
      double diagonal = 1 + w * (kept[faces + i] + kept[faces + i + 1]) * slope[c] - lower * up;
      up = i == cells - 1 ? 0 : -w * kept[faces + i + 1] * slope[c + stride] / diagonal;
      before = (x[c] - lower * before) / diagonal;
      upper[i] = up;
      x[c] = before;
    }
    for (int i = cells - 2; i >= 0; i--) {
      int c = base + i * stride;
      x[c] -= upper[i] * x[c + stride];
    }
  }

  /** The end meets the beginning: the corners of the matrix by Sherman and Morrison's formula. */
  private void ring(
      double[] x, double[] slope, double[] width, double weight, int base, int faces) {
    int last = base + (cells - 1) * stride;
    double g = kept[faces];
    double topRight = -weight / width[0] * g * slope[last];
    double bottomLeft = -weight / width[cells - 1] * g * slope[base];
    double extra = -(1 + weight / width[0] * (g + kept[faces + 1]) * slope[base]);
    double before = 0;
    double beforeCorner = 0;
    double up = 0;
    for (int i = 0; i < cells; i++) {
      int c = base + i * stride;
      double w = weight / width[i];
      double lower = i == 0 ? 0 : -w * kept[faces + i] * slope[c - stride];
      double own = 1 + w * (kept[faces + i] + kept[faces + i + 1]) * slope[c];
      double given = 0;
      if (i == 0) {
        own -= extra;
        given = extra;
      } else if (i == cells - 1) {
        own -= topRight * bottomLeft / extra;
        given = bottomLeft;
      }
      double diagonal = own - lower * up;
      up = i == cells - 1 ? 0 : -w * kept[faces + i + 1] * slope[c + stride] / diagonal;
      before = (x[c] - lower * before) / diagonal;
      beforeCorner = (given - lower * beforeCorner) / diagonal;
      upper[i] = up;
      value[i] = before;
      corner[i] = beforeCorner;
    }
    for (int i = cells - 2; i >= 0; i--) {
      value[i] -= upper[i] * value[i + 1];
      corner[i] -= upper[i] * corner[i + 1];
    }
    double along = value[0] + topRight / extra * value[cells - 1];
    double factor = along / (1 + corner[0] + topRight / extra * corner[cells - 1]);
    for (int i = 0; i < cells; i++) {
      x[base + i * stride] = value[i] - factor * corner[i];
    }
  }
}
