package seamsoak.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Columns of numbers and words, as text aligned: numbers to the right, words to the left. */
final class Table {
  private static final int SHORT_ROWS = 12;

  /** What is left of a terminal's line beside the indent. */
  private static final int MOST_WIDTH = Page.WIDTH - 2;

  /** No column of words gets narrower. */
  private static final int LEAST_WORDS = 12;

  private static final String GAP = "  ";
  private static final Pattern NUMBER = Pattern.compile("[-<>+.0-9%]*( h)?");

  /** Heads of a column that tells in another unit what the one before it tells. */
  private static final List<String> SECOND_UNITS = List.of("C", "mm");

  private final List<List<String>> rows = new ArrayList<>();
  private String caption = "";

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

  /** What the table shows, said above it. */
  Table captioned(String words) {
    caption = words;
    return this;
  }

  String caption() {
    return caption;
  }

  /** One column as a page shows it: the second of two units can do without on a small screen. */
  record Column(String head, boolean number, boolean second) {
    /** Its classes in a page. */
    String classes() {
      String all = (number ? "number" : "") + (second ? " second" : "");
      return all.isEmpty() ? null : all.strip();
    }
  }

  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    List<String> heads = rows.get(0);
    for (int c = 0; c < heads.size(); c++) {
      String head = heads.get(c);
      boolean second = c > 0 && SECOND_UNITS.contains(head);
      String of = second ? heads.get(c - 1).replaceFirst("(^| )\\S+$", "$1") : "";
      columns.add(new Column(of + head, isNumber(c), second));
    }
    return columns;
  }

  /** The rows below the heads. */
  List<List<String>> body() {
    return rows.subList(1, rows.size());
  }

  /** One that fits a page with room to spare is not broken in two. */
  String classes() {
    return body().size() <= SHORT_ROWS ? "short" : null;
  }

  private boolean isNumber(int column) {
    return body().stream().allMatch(r -> NUMBER.matcher(r.get(column)).matches());
  }

  List<String> lines() {
    int columns = rows.get(0).size();
    int[] width = new int[columns];
    boolean[] number = new boolean[columns];
    for (int c = 0; c < columns; c++) {
      int column = c;
      number[c] = isNumber(c);
      width[c] = rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
    }
    narrow(width, number);
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      List<List<String>> cells = new ArrayList<>();
      for (int c = 0; c < columns; c++) {
        cells.add(wrapped(row.get(c), width[c]));
      }
      int height = cells.stream().mapToInt(List::size).max().orElse(1);
      for (int i = 0; i < height; i++) {
        lines.add(line(cells, i, width, number));
      }
    }
    return lines;
  }

  private static String line(List<List<String>> cells, int i, int[] width, boolean[] number) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < width.length; c++) {
      String cell = i < cells.get(c).size() ? cells.get(c).get(i) : "";
      String space = " ".repeat(Math.max(0, width[c] - cell.length()));
      line.append(c == 0 ? "" : GAP).append(number[c] ? space + cell : cell + space);
    }
    return line.toString().stripTrailing();
  }

  /** Takes what does not fit a line from the widest columns of words. */
  private static void narrow(int[] width, boolean[] number) {
    int over = Arrays.stream(width).sum() + GAP.length() * (width.length - 1) - MOST_WIDTH;
    for (; over > 0; over--) {
      int widest = -1;
      for (int c = 0; c < width.length; c++) {
        if (!number[c] && width[c] > LEAST_WORDS && (widest < 0 || width[c] > width[widest])) {
          widest = c;
        }
      }
      if (widest < 0) {
        return;
      }
      width[widest]--;
    }
  }

  private static List<String> wrapped(String cell, int width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : cell.split(" ")) {
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

  static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
