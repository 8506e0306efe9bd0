package seamsoak.plane;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import seamsoak.plane.SectionHistory.Bar;
import seamsoak.plane.SectionHistory.Fineness;
import seamsoak.plane.SectionHistory.Told;

/** The stored values of the second solver, for tests that compare something with them. */
public final class ReferenceTable {
  static final String HEAD = "history,step,what,place,quantity,value,unit,source";

  private ReferenceTable() {}

  /**
   * A stored value.
   *
   * @param value wt% of 1084 at equal activity, or mm
   */
  public record Row(String history, int step, String what, String place, double value) {
    Bar bar() {
      return Bar.valueOf(history.toUpperCase(Locale.ROOT));
    }

    double in(List<Told> told) {
      return SectionHistory.value(told, step, what, place);
    }
  }

  /** What this package's solver gave on its fine grids. */
  public static List<Row> demo() {
    return rows("demo.csv", 5);
  }

  /** What another 2-D solver gave before. */
  public static List<Row> earlier() {
    return rows("earlier.csv", 4);
  }

  private static List<Row> rows(String file, int valueColumn) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    ReferenceTable.class.getResourceAsStream("/reference-2d/" + file), file),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .skip(1)
          .map(l -> l.split(","))
          .map(c -> new Row(c[0], Integer.parseInt(c[1]), c[2], c[3], number(c[valueColumn])))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double number(String text) {
    return Double.parseDouble(text);
  }

  /** Grid on which the stored values of a history were computed. */
  static Fineness fineness(Bar bar) {
    return bar == Bar.LAYERED ? Fineness.FINE : Fineness.FINEST;
  }

  /** The whole table as it should be stored. */
  static String computed() {
    StringBuilder text = new StringBuilder(HEAD + "\n");
    Stream.of(Bar.values())
        .flatMap(bar -> SectionHistory.told(bar, fineness(bar), 15).stream())
        .forEach(t -> text.append(line(t)));
    return text.toString();
  }

  private static String line(Told t) {
    return String.format(
        Locale.ROOT,
        "%s,%d,%s,%s,%s,%.5f,%s,2-D section solver; finest cell %.0f um%n",
        t.bar().name().toLowerCase(Locale.ROOT),
        t.step(),
        t.what(),
        t.place(),
        t.quantity(),
        t.value(),
        t.quantity().equals(Places.WIDTH) ? "mm" : "wt% of 1084",
        1e6 * fineness(t.bar()).mesh.finestMetres());
  }
}
