package seamsoak.data;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import seamsoak.unit.Printable;

/** A CSV table with a header line, read whole; every cell knows its place. */
public final class CsvTable {
  // Stricter than Double.parseDouble, which also takes "1d", "0x1p3" and "NaN".
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");

  private final Text text;
  private final List<String> columns;
  private final Map<String, Integer> indexes = new HashMap<>();
  private final List<Row> rows;

  private CsvTable(Text text) {
    this.text = text;
    List<CSVRecord> records = records(text);
    if (records.isEmpty()) {
      throw new Fault(
          Place.of(text.file()), "the file is empty", "give a table with a header line");
    }
    Row header = new Row(records.get(0));
    this.columns = header.cells;
    for (int i = 0; i < columns.size(); i++) {
      if (indexes.put(columns.get(i), i) != null) {
        throw new Fault(
            header.place(i),
            "column '" + Fault.shown(columns.get(i)) + "' stands twice",
            "name each column once");
      }
    }
    this.rows = records.stream().skip(1).map(Row::new).toList();
    for (Row row : rows) {
      row.checkPrintable();
      if (row.cells.size() != columns.size()) {
        throw new Fault(
            row.place(),
            "the line has " + row.cells.size() + " cells",
            "the header has " + columns.size());
      }
    }
  }

  /** Reads UTF-8 CSV (RFC 4180) with a header line; {@link Fault} for anything else. */
  public static CsvTable read(String file, InputStream in) {
    try {
      return new CsvTable(Text.read(file, in));
    } catch (IOException e) {
      throw new Fault(
          Place.of(file), "cannot be read (" + e.getMessage() + ")", "give a readable file");
    }
  }

  private static List<CSVRecord> records(Text text) {
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
    List<CSVRecord> records = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text.content(), format)) {
      Iterator<CSVRecord> each = parser.iterator();
      while (each.hasNext()) {
        records.add(each.next());
      }
      return records;
    } catch (IOException | UncheckedIOException e) {
      // The parser's own message names its classes; where the last good line ended is what helps.
      Place last =
          records.isEmpty()
              ? new Place(text.file(), 1, 0)
              : text.place((int) records.get(records.size() - 1).getCharacterPosition());
      throw new Fault(
          new Place(text.file(), last.line(), 0),
          "a quotation mark at or after this line is out of place or not closed",
          "put quotation marks around the whole cell and double those inside it");
    }
  }

  public String file() {
    return text.file();
  }

  public List<String> columns() {
    return columns;
  }

  public List<Row> rows() {
    return rows;
  }

  /** The rows of a table that nothing can be answered without; {@link Fault} without any. */
  public List<Row> someRows() {
    if (rows.isEmpty()) {
      throw new Fault(
          Place.of(text.file()), "the file has a header and no lines", "leave none of them out");
    }
    return rows;
  }

  /** One line of the table. */
  public final class Row {
    private final int start;
    private final List<String> cells;

    private Row(CSVRecord record) {
      this.start = (int) record.getCharacterPosition();
      this.cells = record.stream().map(String::strip).toList();
    }

    /** What a cell holds may be shown in a table or a sentence. */
    private void checkPrintable() {
      for (int i = 0; i < cells.size(); i++) {
        String cell = cells.get(i);
        if (!Printable.is(cell) && !Printable.is(cell.replaceAll("\\R", " "))) {
          throw new Fault(
              place(i), "'" + Fault.shown(cell) + "' holds control characters", "give text");
        }
      }
    }

    /** The line as a whole. */
    public Place place() {
      return new Place(file(), place(0).line(), 0);
    }

    /** Where the cell of that column begins. */
    public Place place(String column) {
      return place(index(column));
    }

    /** The cell's text without spaces around it, empty when blank. */
    public String text(String column) {
      return cells.get(index(column));
    }

    /** The parts of a cell that lists things, parted by semicolons. */
    public List<String> list(String column) {
      return Pattern.compile(";")
          .splitAsStream(text(column))
          .map(String::strip)
          .filter(part -> !part.isEmpty())
          .toList();
    }

    /** The cell's number, or empty when blank; {@link Fault} when it is not a finite number. */
    public OptionalDouble number(String column) {
      String cell = text(column);
      if (cell.isEmpty()) {
        return OptionalDouble.empty();
      }
      if (NUMBER.matcher(cell).matches()) {
        double value = Double.parseDouble(cell);
        if (Double.isFinite(value)) {
          return OptionalDouble.of(value);
        }
      }
      throw new Fault(
          place(column),
          "'" + Fault.shown(cell) + "' in column " + column + " is not a number",
          "write a plain number such as 0.84");
    }

    /** The cell's number; {@link Fault} when blank or not a number. */
    public double required(String column) {
      return number(column)
          .orElseThrow(
              () ->
                  new Fault(place(column), "column " + column + " is blank", "it needs a number"));
    }

    private int index(String column) {
      Integer i = indexes.get(column);
      if (i == null) {
        throw new Fault(
            new Place(file(), 1, 0), "no column '" + column + "'", "the table needs it");
      }
      return i;
    }

    // The parser tells where a record starts but not its cells: walk over the separators outside
    // quotation marks, from the record's first character (it counts skipped empty lines in).
    private Place place(int cell) {
      String content = text.content();
      int at = start;
      while (at < content.length() && "\r\n".indexOf(content.charAt(at)) >= 0) {
        at++;
      }
      boolean quoted = false;
      for (int left = cell; left > 0 && at < content.length(); at++) {
        char c = content.charAt(at);
        quoted ^= c == '"';
        if (c == ',' && !quoted) {
          left--;
        }
      }
      return text.place(at);
    }
  }
}
