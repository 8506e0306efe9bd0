package seamsoak.measured;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.data.CsvTable;

/**
 * One published measurement.
 *
 * @param kind what was measured: the name of its file
 * @param what which of several things that file holds
 * @param steel analysis, or a steel of the table; two with a bar between them for a couple
 * @param celsius heat
 * @param minutes at that heat
 * @param condition atmosphere, or how it was before
 * @param measured the figure
 * @param unit of the figure
 * @param error stated with it or judged, either way
 * @param note what else to know
 */
record Measurement(
    String kind,
    String what,
    String steel,
    OptionalDouble celsius,
    OptionalDouble minutes,
    String condition,
    double measured,
    String unit,
    double error,
    String source,
    String read,
    String note) {
  static final Path FOLDER = Path.of("src/test/resources/measured");

  /** All of one kind. */
  static List<Measurement> of(String kind) {
    List<Measurement> all = new ArrayList<>();
    for (CsvTable.Row row : table(kind).rows()) {
      all.add(
          new Measurement(
              kind,
              row.text("what"),
              row.text("steel"),
              row.number("temperature_C"),
              row.number("minutes"),
              row.text("condition"),
              row.required("measured"),
              row.text("unit"),
              row.number("error").orElse(0),
              row.text("source"),
              row.text("read"),
              row.text("note")));
    }
    return all;
  }

  /** A table of the folder. */
  static CsvTable table(String name) {
    Path file = FOLDER.resolve(name + ".csv");
    try (InputStream in = Files.newInputStream(file)) {
      return CsvTable.read(file.toString(), in);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  double kelvin() {
    return celsius.orElseThrow() + 273.15;
  }

  double seconds() {
    return 60 * minutes.orElseThrow();
  }

  @Override
  public String toString() {
    return Stream.of(
            kind + ":",
            what,
            steel,
            celsius.isPresent() ? celsius.getAsDouble() + " C" : "",
            minutes.isPresent() ? minutes.getAsDouble() + " min" : "",
            condition,
            measured + " " + unit)
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(" "));
  }
}
