package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;

/** Lines of text set as one. */
record Block(List<Line> lines) {
  static final Block EMPTY = new Block(List.of());

  record Line(String text, Print print) {}

  /** With a text below, broken into at most so many lines of at most {@code width}. */
  Block and(String text, double width, int most, Print print) {
    List<Line> all = new ArrayList<>(lines);
    if (!text.isBlank()) {
      print.wrap(text, width, most).forEach(line -> all.add(new Line(line, print)));
    }
    return new Block(List.copyOf(all));
  }

  static Block of(String text, double width, int most, Print print) {
    return EMPTY.and(text, width, most, print);
  }

  static Block of(String line, Print print) {
    return of(line, Double.POSITIVE_INFINITY, 1, print);
  }

  double width() {
    return lines.stream().mapToDouble(line -> line.print.width(line.text)).max().orElse(0);
  }

  double height() {
    return lines.stream().mapToDouble(line -> line.print.leading()).sum();
  }
}
