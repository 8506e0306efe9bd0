package seamsoak.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/** Lines of text set as one, with the width and height that they take. */
record Block(List<Line> lines, double width, double height) {

  record Line(String text, double size, boolean bold, Color color) {
    double height() {
      return size * 1.25;
    }
  }

  static Block of(Type type, List<Line> lines) {
    double width = 0;
    double height = 0;
    for (Line line : lines) {
      width = Math.max(width, type.width(line.text(), line.size(), line.bold()));
      height += line.height();
    }
    return new Block(List.copyOf(lines), width, height);
  }

  /** The text broken into lines of at most {@code width}. */
  static List<Line> wrap(
      Type type, String text, double width, int most, double size, boolean bold, Color color) {
    List<Line> lines = new ArrayList<>();
    for (String line : type.wrap(text, width, most, size, bold)) {
      lines.add(new Line(line, size, bold, color));
    }
    return lines;
  }
}
