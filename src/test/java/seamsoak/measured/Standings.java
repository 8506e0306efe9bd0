package seamsoak.measured;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.CsvTable;
import seamsoak.source.Estimate;

/** How the program does against the measurements of each kind, told as a table. */
final class Standings {
  static final List<String> KINDS =
      List.of(
          "as-quenched-hardness",
          "tempered-hardness",
          "air-cooled-hardness",
          "martensite-start",
          "retained-austenite",
          "critical-temperature",
          "austenite-grain",
          "decarburized-depth",
          "decarburization-temperature",
          "scale-thickness",
          "carbon-at-seam",
          "carbon-in-nickel");

  /** A measurement beside what the program says; empty where it has nothing to compare. */
  record Compared(Measurement measured, Optional<Estimate> program) {
    boolean inside() {
      return program
          .map(p -> measured.measured() >= p.low() && measured.measured() <= p.high())
          .orElse(false);
    }

    private double ratio() {
      return measured.measured() / program.orElseThrow().value();
    }

    private double width() {
      return program.orElseThrow().high() - program.orElseThrow().low();
    }
  }

  private final Map<String, List<Compared>> byKind = new LinkedHashMap<>();

  Standings(Program program) {
    for (String kind : KINDS) {
      byKind.put(
          kind, Measurement.of(kind).stream().map(m -> new Compared(m, program.says(m))).toList());
    }
  }

  List<Compared> all() {
    return byKind.values().stream().flatMap(List::stream).toList();
  }

  /** Share of a kind that lies inside. */
  double share(String kind) {
    List<Compared> some = comparable(kind);
    return (double) inside(some) / some.size();
  }

  private List<Compared> comparable(String kind) {
    return byKind.get(kind).stream().filter(c -> c.program().isPresent()).toList();
  }

  private static long inside(List<Compared> some) {
    return some.stream().filter(Compared::inside).count();
  }

  /** Lines of a table in Markdown, with what it was before beside. */
  List<String> table() {
    Map<String, CsvTable.Row> before = new LinkedHashMap<>();
    Measurement.table("before").rows().forEach(r -> before.put(r.text("kind"), r));
    List<String> lines = new ArrayList<>();
    lines.add(
        "| measured | values | inside before | inside now | measured over told, median before"
            + " | now | band before | now |");
    lines.add("| --- | --- | --- | --- | --- | --- | --- | --- |");
    byKind.forEach(
        (kind, all) -> {
          List<Compared> some = comparable(kind);
          CsvTable.Row was = before.get(kind);
          lines.add(
              String.join(
                  " | ",
                  "| " + kind.replace('-', ' '),
                  "" + some.size(),
                  was.text("inside"),
                  "" + inside(some),
                  was.text("median"),
                  median(some),
                  was.text("band"),
                  band(some) + " |"));
        });
    return lines;
  }

  /** Middle of measured over told; of those that are not measured as nothing. */
  private static String median(List<Compared> some) {
    List<Double> ratios =
        some.stream()
            .filter(c -> c.program().orElseThrow().value() > 0)
            .map(Compared::ratio)
            .filter(Double::isFinite)
            .sorted()
            .toList();
    return ratios.isEmpty() ? "-" : String.format(Locale.ROOT, "%.2f", middle(ratios));
  }

  /** Middle of the bands' width, of those in the unit of the first. */
  private static String band(List<Compared> some) {
    if (some.stream().allMatch(c -> c.program().orElseThrow().source().equals(Program.NO_BAND))) {
      return "none told";
    }
    String unit = some.get(0).measured().unit();
    List<Double> widths =
        some.stream()
            .filter(c -> c.measured().unit().equals(unit))
            .map(Compared::width)
            .filter(Double::isFinite)
            .sorted(Comparator.naturalOrder())
            .toList();
    double middle = middle(widths);
    return String.format(Locale.ROOT, middle < 10 ? "%.1f %s" : "%.0f %s", middle, unit);
  }

  private static double middle(List<Double> sorted) {
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }
}
