package seamsoak.report;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Columns of numbers and words, put together by {@link Columns}.
 *
 * @param caption what it shows, said above it
 */
record Table(String caption, List<Column> columns) {
  private static final int SHORT_ROWS = 12;
  private static final Pattern NUMBER = Pattern.compile("[-<>+.0-9%]*( h)?");

  Table {
    columns = List.copyOf(columns);
  }

  /**
   * A column.
   *
   * @param head on a terminal
   * @param name its head where there is room
   * @param second whether it tells in another unit what the one before it tells: a small screen can
   *     do without
   */
  record Column(String head, String name, boolean second, List<String> cells) {
    boolean isNumber() {
      return cells.stream().allMatch(cell -> NUMBER.matcher(cell).matches());
    }

    /** Its classes in a page. */
    String classes() {
      String all = (isNumber() ? "number" : "") + (second ? " second" : "");
      return all.isEmpty() ? null : all.strip();
    }
  }

  int rows() {
    return columns.get(0).cells().size();
  }

  /** The rows below the heads. */
  List<List<String>> body() {
    return IntStream.range(0, rows())
        .mapToObj(r -> columns.stream().map(column -> column.cells().get(r)).toList())
        .toList();
  }

  /** One that fits a page with room to spare is not broken in two. */
  String classes() {
    return rows() <= SHORT_ROWS ? "short" : null;
  }
}
