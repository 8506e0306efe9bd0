package seamsoak.plane;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Cells along one axis, in blocks between lines. The arrays are never written to after making.
 *
 * @param width of each cell, m
 * @param face index of the face on which each line lies; the first is 0, the last the number of
 *     cells
 * @param line each line
 * @param ring whether the end joins the beginning
 */
record Axis(double[] width, int[] face, Line[] line, boolean ring) {
  /** One block of one cell. */
  static Axis of(double metres, Line from, Line to) {
    return new Axis(new double[] {metres}, new int[] {0, 1}, new Line[] {from, to}, false);
  }

  int cells() {
    return width.length;
  }

  int blocks() {
    return line.length - 1;
  }

  int blockOf(int cell) {
    int b = 0;
    while (face[b + 1] <= cell) {
      b++;
    }
    return b;
  }

  /** Positions of all faces. */
  double[] positions() {
    double[] at = new double[cells() + 1];
    for (int i = 0; i < cells(); i++) {
      at[i + 1] = at[i] + width[i];
    }
    return at;
  }

  double metres() {
    return Arrays.stream(width).sum();
  }

  /** Positions of the lines. */
  double[] linePositions() {
    double[] at = positions();
    return Arrays.stream(face).mapToDouble(f -> at[f]).toArray();
  }

  /** The cell at a position. */
  int cellAt(double metres) {
    double[] at = positions();
    int i = 0;
    while (i < cells() - 1 && at[i + 1] <= metres) {
      i++;
    }
    return i;
  }

  Axis withLines(UnaryOperator<Line> change) {
    return new Axis(width, face, Stream.of(line).map(change).toArray(Line[]::new), ring);
  }

  Axis scaled(double factor) {
    double[] next = Arrays.stream(width).map(w -> w * factor).toArray();
    return new Axis(next, face, line, ring).withLines(l -> l.scaled(factor));
  }

  Axis withWidth(int cell, double metres) {
    double[] next = width.clone();
    next[cell] = metres;
    return new Axis(next, face, line, ring);
  }

  Axis reversed() {
    int n = cells();
    int m = line.length;
    return new Axis(
        IntStream.range(0, n).mapToDouble(i -> width[n - 1 - i]).toArray(),
        IntStream.range(0, m).map(i -> n - face[m - 1 - i]).toArray(),
        IntStream.range(0, m).mapToObj(i -> line[m - 1 - i]).toArray(Line[]::new),
        ring);
  }

  /** This axis and then another, with one line where they meet. */
  Axis followedBy(Axis next, Line joint) {
    int n = cells();
    int m = line.length;
    int all = m + next.line.length - 1;
    double[] widths = Arrays.copyOf(width, n + next.cells());
    System.arraycopy(next.width, 0, widths, n, next.cells());
    int[] faces = Arrays.copyOf(face, all);
    Line[] lines = Arrays.copyOf(line, all);
    lines[m - 1] = joint;
    for (int i = 1; i < next.line.length; i++) {
      faces[m - 1 + i] = n + next.face[i];
      lines[m - 1 + i] = next.line[i];
    }
    return new Axis(widths, faces, lines, false);
  }

  /** The end joined to the beginning. */
  Axis closed(Line joint) {
    Line[] lines = line.clone();
    lines[0] = joint;
    lines[lines.length - 1] = joint;
    return new Axis(width, face, lines, true);
  }

  /** The first two cells made one. */
  Axis merged() {
    if (face[1] < 2) {
      throw new IllegalStateException("nothing is left of the outermost block");
    }
    double[] next = Arrays.copyOfRange(width, 1, cells());
    next[0] += width[0];
    return new Axis(next, Arrays.stream(face).map(f -> Math.max(0, f - 1)).toArray(), line, ring);
  }

  /** What is left without the first cells, whole ones. */
  Axis without(int cells) {
    int block = blockOf(cells);
    int[] faces = Arrays.copyOfRange(face, block, face.length);
    for (int i = 0; i < faces.length; i++) {
      faces[i] = Math.max(0, faces[i] - cells);
    }
    Line[] lines = Arrays.copyOfRange(line, block, line.length);
    lines[0] = Line.OUTSIDE;
    return new Axis(Arrays.copyOfRange(width, cells, cells()), faces, lines, ring);
  }
}
