package seamsoak.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** A table as lines of plain text: numbers to the right, words to the left. */
final class PlainTable {
  /** No column of words gets narrower. */
  private static final int LEAST_WORDS = 12;

  private static final String GAP = "  ";
  private final List<Table.Column> columns;
  private final int[] width;

  /**
   * @param most width of a line
   */
  PlainTable(Table table, int most) {
    columns = table.columns();
    width =
        columns.stream()
            .mapToInt(
                c ->
                    Stream.concat(Stream.of(c.head()), c.cells().stream())
                        .mapToInt(String::length)
                        .max()
                        .orElse(0))
            .toArray();
    narrow(most);
  }

  /** Takes what does not fit a line from the widest columns of words. */
  private void narrow(int most) {
    int over = Arrays.stream(width).sum() + GAP.length() * (width.length - 1) - most;
    for (; over > 0; over--) {
      int widest = -1;
      for (int c = 0; c < width.length; c++) {
        if (!columns.get(c).isNumber()
            && width[c] > LEAST_WORDS
            && (widest < 0 || width[c] > width[widest])) {
          widest = c;
        }
      }
      if (widest < 0) {
        return;
      }
      width[widest]--;
    }
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (int row = -1; row < columns.get(0).cells().size(); row++) {
      List<List<String>> cells = new ArrayList<>();
      for (int c = 0; c < width.length; c++) {
        Table.Column column = columns.get(c);
        cells.add(wrapped(row < 0 ? column.head() : column.cells().get(row), width[c]));
      }
      int height = cells.stream().mapToInt(List::size).max().orElse(1);
      for (int i = 0; i < height; i++) {
        lines.add(line(cells, i));
      }
    }
    return lines;
  }

  private String line(List<List<String>> cells, int i) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < width.length; c++) {
      String cell = i < cells.get(c).size() ? cells.get(c).get(i) : "";
      String space = " ".repeat(Math.max(0, width[c] - cell.length()));
      line.append(c == 0 ? "" : GAP)
          .append(columns.get(c).isNumber() ? space + cell : cell + space);
    }
    return line.toString().stripTrailing();
  }

  /** Words in lines, none wider than that where a word is not. */
  static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && longer.length() > width) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }
}
