package seamsoak.data;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A CSV table with a header line, read whole; every cell knows its place. */
public final class CsvTable {
  private final String file;
  private final List<String> columns;
  private final List<Row> rows;

  private CsvTable(String file, List<String> columns, List<Row> rows) {
    this.file = file;
    this.columns = columns;
    this.rows = rows;
  }

  /** Reads UTF-8 CSV (RFC 4180) with a header line; {@link Fault} for anything else. */
  public static CsvTable read(String file, InputStream in) {
    Reader reader =
        new InputStreamReader(
            in,
            StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
    try (CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
      List<String> columns = null;
      List<Row> rows = new ArrayList<>();
      for (CSVRecord record : parser) {
        int line = (int) parser.getCurrentLineNumber();
        if (columns == null) {
          columns = header(file, record);
        } else if (record.size() != columns.size()) {
          throw new Fault(
              new Place(file, line, 0),
              "the line has " + record.size() + " cells",
              "the header has " + columns.size());
        } else {
          rows.add(new Row(file, line, columns, record.toList()));
        }
      }
      if (columns == null) {
        throw new Fault(Place.of(file), "the file is empty", "give a table with a header line");
      }
      return new CsvTable(file, columns, List.copyOf(rows));
    } catch (CharacterCodingException e) {
      throw new Fault(Place.of(file), "it is not UTF-8 text", "save it as UTF-8");
    } catch (IOException | UncheckedIOException e) {
      throw new Fault(
          Place.of(file), "it is not CSV (" + e.getMessage() + ")", "give comma-separated text");
    }
  }

  private static List<String> header(String file, CSVRecord record) {
    List<String> names = new ArrayList<>(record.toList());
    names.set(0, names.get(0).replace("\uFEFF", ""));
    Set<String> seen = new LinkedHashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new Fault(
            new Place(file, 1, 0), "column '" + name + "' stands twice", "name each column once");
      }
    }
    return List.copyOf(names);
  }

  public String file() {
    return file;
  }

  public List<String> columns() {
    return columns;
  }

  public List<Row> rows() {
    return rows;
  }

  /** One line of the table. */
  public static final class Row {
    private final String file;
    private final int line;
    private final List<String> columns;
    private final List<String> cells;

    private Row(String file, int line, List<String> columns, List<String> cells) {
      this.file = file;
      this.line = line;
      this.columns = columns;
      this.cells = cells;
    }

    public Place place() {
      return new Place(file, line, 0);
    }

    /** The cell's text, empty when blank; {@link Fault} when the table has no such column. */
    public String text(String column) {
      int i = columns.indexOf(column);
      if (i < 0) {
        throw new Fault(new Place(file, 1, 0), "no column '" + column + "'", "the table needs it");
      }
      return cells.get(i).strip();
    }

    /** The cell's number, or empty when blank; {@link Fault} when it is not a finite number. */
    public OptionalDouble number(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        return OptionalDouble.empty();
      }
      try {
        double value = Double.parseDouble(text);
        if (Double.isFinite(value)) {
          return OptionalDouble.of(value);
        }
      } catch (NumberFormatException e) {
        // falls through to the one sentence below
      }
      throw new Fault(
          new Place(file, line, columns.indexOf(column) + 1),
          "'" + text + "' in column " + column + " is not a number",
          "write a plain number such as 0.84");
    }

    /** The cell's number; {@link Fault} when blank or not a number. */
    public double required(String column) {
      return number(column)
          .orElseThrow(
              () ->
                  new Fault(
                      new Place(file, line, columns.indexOf(column) + 1),
                      "column " + column + " is blank",
                      "it needs a number"));
    }
  }
}
