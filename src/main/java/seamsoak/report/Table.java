package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Aligned columns: numbers to the right, words to the left. */
final class Table {
  private static final String GAP = "  ";
  private static final Pattern NUMBER = Pattern.compile("[-<>+.0-9%]*( h)?");

  private final List<List<String>> rows = new ArrayList<>();

  /** Each part is a text or a list of texts. */
  Table(Object... heads) {
    row(heads);
  }

  Table row(Object... parts) {
    List<String> cells = new ArrayList<>();
    for (Object part : parts) {
      if (part instanceof List<?> list) {
        list.forEach(cell -> cells.add((String) cell));
      } else {
        cells.add((String) part);
      }
    }
    if (!rows.isEmpty() && cells.size() != rows.get(0).size()) {
      throw new IllegalStateException("a row has " + cells.size() + " cells: " + cells);
    }
    rows.add(cells);
    return this;
  }

  List<String> lines() {
    int columns = rows.get(0).size();
    int[] width = new int[columns];
    boolean[] number = new boolean[columns];
    for (int c = 0; c < columns; c++) {
      int column = c;
      width[c] = rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
      number[c] = rows.stream().skip(1).allMatch(r -> NUMBER.matcher(r.get(column)).matches());
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < columns; c++) {
        String cell = row.get(c);
        String space = " ".repeat(width[c] - cell.length());
        line.append(c == 0 ? "" : GAP).append(number[c] ? space + cell : cell + space);
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
