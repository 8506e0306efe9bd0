package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.single.SteelReport;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;

/** One steel, or all of them, in words. */
public record SteelText(UnitSystem units) {
  private static final String UNKNOWN = "unknown, see below";

  /** The table of steels; at once, the names of each kind. */
  public Answer list(List<Steel> steels) {
    Table table = new Table("steel", "C %", "designation", "kind");
    Map<String, List<String>> byKind = new LinkedHashMap<>();
    for (Steel s : steels) {
      table.row(s.id(), Numbers.percent(s.analysis().carbon()), s.designation(), s.category());
      byKind.computeIfAbsent(s.category(), k -> new ArrayList<>()).add(s.id());
    }
    List<String> kinds = new ArrayList<>();
    byKind.forEach((kind, ids) -> kinds.add(kind + ": " + String.join(", ", ids)));
    return new Answer(
        List.of(Chapter.of("steels").table(table)),
        List.of(
            Chapter.of("steels", steels.size() + " steels").items(kinds),
            Chapter.of("rest")
                .words("--full also shows their carbon; steels GRADE tells of one.")));
  }

  /**
   * One steel.
   *
   * @param citation of a source's key
   */
  public Answer told(SteelReport r, Function<String, Optional<String>> citation) {
    Numbers shown = new Numbers(units);
    Chapter notes = Chapter.of("notes", "Notes").words(r.notes());
    return new Answer(
        List.of(
            answer(r),
            temperatures(r, shown),
            ranges(r, shown),
            formulas(r, shown),
            diffusivities(r, shown).items(r.chosen()),
            notes,
            Chapter.of("sources", "Sources").items(sources(r, citation)),
            Chapter.of("remarks", "Remarks").items(r.exceeded())),
        List.of(
            answer(r),
            temperatures(r, shown),
            ranges(r, shown),
            notes,
            Chapter.of("rest")
                .words(
                    "--full also shows every formula side by side, which of them left its range,"
                        + " the speed of carbon, and sources.")));
  }

  private static Chapter answer(SteelReport r) {
    String analysis =
        r.analysisPct().entrySet().stream()
            .map(e -> e.getKey() + " " + trimmed(e.getValue()))
            .collect(Collectors.joining(", "));
    return Chapter.of("answer")
        .words(r.designation() + ", " + r.category() + ": " + analysis + " wt%, the rest iron.")
        .words(
            r.aliases().isEmpty() ? "" : "Also known as " + String.join(", ", r.aliases()) + ".");
  }

  private static Chapter temperatures(SteelReport r, Numbers shown) {
    return Chapter.of("temperatures", "Temperatures")
        .table(limits(r, shown))
        .words(
            r.msC().isEmpty()
                ? ""
                : "Ms is for %s %% carbon dissolved at %s."
                    .formatted(
                        Numbers.percent(r.dissolvedCarbonPct()), shown.temperature(r.hardenC())))
        .words(
            r.unknown().values().stream()
                .distinct()
                .map(why -> "Unknown (" + names(r, why) + "): " + why + ".")
                .toList());
  }

  private static Chapter ranges(SteelReport r, Numbers shown) {
    Table table = new Table("", shown.temperatureHeads("from"), shown.temperatureHeads("to"));
    r.ranges()
        .forEach(
            (name, range) ->
                table.row(
                    name,
                    shown.temperatureCells(range.lowC()),
                    shown.temperatureCells(range.highC())));
    return Chapter.of("ranges", "Published ranges").table(table);
  }

  private static String names(SteelReport r, String why) {
    Map<String, String> shown = Map.of("ac1C", "Ac1", "ac3OrAccmC", r.upper(), "msC", "Ms");
    return r.unknown().entrySet().stream()
        .filter(e -> e.getValue().equals(why))
        .map(e -> shown.getOrDefault(e.getKey(), e.getKey()))
        .collect(Collectors.joining(", "));
  }

  private static Table limits(SteelReport r, Numbers shown) {
    Table table =
        new Table(
            "",
            shown.temperatureHeads("at"),
            shown.temperatureHeads("low"),
            shown.temperatureHeads("high"),
            "source");
    quantity(table, shown, "Ac1", r.ac1C());
    quantity(table, shown, r.upper(), r.ac3OrAccmC());
    quantity(table, shown, "Ms", r.msC());
    quantity(table, shown, "solidus", Optional.of(r.solidusC()));
    quantity(table, shown, "forge up to", Optional.of(r.highestForgingC()));
    quantity(table, shown, "burns", Optional.of(r.burningC()));
    quantity(table, shown, "soak below", Optional.of(r.refusalC()));
    return table;
  }

  private static void quantity(
      Table table, Numbers shown, String name, Optional<SteelReport.Quantity> quantity) {
    table.row(
        name,
        cells(shown, quantity.map(SteelReport.Quantity::value)),
        cells(shown, quantity.map(SteelReport.Quantity::low)),
        cells(shown, quantity.map(SteelReport.Quantity::high)),
        quantity.map(SteelReport.Quantity::source).orElse(UNKNOWN));
  }

  private static List<String> cells(Numbers shown, Optional<Double> celsius) {
    return celsius.map(shown::temperatureCells).orElseGet(shown::unknownTemperature);
  }

  private static Chapter formulas(SteelReport r, Numbers shown) {
    Table table = new Table("formula", "gives", shown.temperatureHeads("at"), "range", "used for");
    for (SteelReport.Formula f : r.formulas()) {
      table.row(
          f.name(),
          f.gives(),
          cells(shown, f.valueC()),
          f.outsideRange() ? "outside" : "",
          f.used().orElse(""));
    }
    return Chapter.of("formulas", "Every formula side by side").table(table);
  }

  private static Chapter diffusivities(SteelReport r, Numbers shown) {
    Chapter chapter =
        Chapter.of(
            "diffusivities",
            "Speed of carbon (diffusivity) side by side, in millionths of mm2 a second");
    for (String phase : List.of("austenite", "ferrite")) {
      List<SteelReport.Diffusivity> of =
          r.diffusivities().stream().filter(d -> d.phase().equals(phase)).toList();
      List<String> heads =
          of.get(0).at().stream()
              .map(a -> shown.temperature(a.temperatureC()).replace(" (", "/").replace(")", ""))
              .toList();
      Table table = new Table("in " + phase, heads, "range", "used for");
      for (SteelReport.Diffusivity d : of) {
        table.row(
            d.name(),
            d.at().stream().map(a -> number(a.squareMetresPerSecond() * 1e12)).toList(),
            d.at().stream().anyMatch(SteelReport.AtTemperature::outsideRange) ? "outside" : "",
            d.used().orElse(""));
      }
      chapter = chapter.table(table);
    }
    return chapter;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
  }

  private static List<String> sources(SteelReport r, Function<String, Optional<String>> citation) {
    Set<String> keys = new LinkedHashSet<>();
    Stream.concat(
            Stream.of(r.ac1C(), r.ac3OrAccmC(), r.msC()).flatMap(Optional::stream),
            Stream.of(r.solidusC(), r.highestForgingC(), r.burningC()))
        .forEach(q -> keys.addAll(List.of(q.source().split(",\\s*"))));
    List<String> all = new ArrayList<>();
    keys.forEach(k -> citation.apply(k).ifPresent(c -> all.add(k + ": " + c)));
    return all;
  }

  private static String trimmed(double value) {
    return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
