package seamsoak.data;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of a text whose delimiter is known and nothing else: any width, in any order, no head. */
public final class ForeignRows {
  /** No cell of a log is longer; a quotation mark that swallows more was never closed. */
  private static final int MOST_LINES = 20;

  private ForeignRows() {}

  /** What is done with a row. */
  public interface Taker {
    /**
     * Takes one row.
     *
     * @param line where it ends, from 1
     * @param cells as written, without quotation marks; at least one
     */
    void take(long line, String[] cells);
  }

  /** A row kept. */
  public record Row(long line, List<String> cells) {}

  /** All rows that are not blank, kept: for as much of a text as is to be looked at twice. */
  public static List<Row> of(String file, String content, char delimiter) {
    List<Row> rows = new ArrayList<>();
    each(file, content, delimiter, (line, cells) -> rows.add(new Row(line, List.of(cells))));
    return rows;
  }

  /** Hands over each row that is not blank, one after the other. */
  public static void each(String file, String content, char delimiter, Taker taker) {
    CSVFormat.Builder format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true);
    // without marks there is nothing to be said of them, and reading goes faster
    format.setQuote(content.indexOf('"') < 0 ? null : '"').setTrailingData(true);
    long last = 0;
    try (CSVParser parser = CSVParser.parse(content, format.get())) {
      Iterator<CSVRecord> each = parser.iterator();
      while (each.hasNext()) {
        CSVRecord record = each.next();
        long line = parser.getCurrentLineNumber();
        String[] cells = record.values();
        if (line - last > MOST_LINES && isSwallowed(cells)) {
          throw open(file, last + 1);
        }
        last = line;
        taker.take(line, cells);
      }
    } catch (IOException | UncheckedIOException e) {
      throw open(file, last + 1);
    }
  }

  /** Blank lines are passed over; those within a cell are not. */
  private static boolean isSwallowed(String[] cells) {
    return Arrays.stream(cells).anyMatch(c -> c.lines().limit(MOST_LINES + 1).count() > MOST_LINES);
  }

  private static Fault open(String file, long line) {
    return new Fault(
        new Place(file, (int) line, 0),
        "a quotation mark at or after this line is not closed",
        "close it or take it out");
  }
}
