package seamsoak.report;

import java.util.ArrayList;
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

  /** The table of steels. */
  public String list(List<Steel> steels) {
    Table table = new Table("steel", "C %", "designation", "kind");
    for (Steel s : steels) {
      table.row(s.id(), Shown.percent(s.analysis().carbon()), s.designation(), s.category());
    }
    return new Page().table(table).toString();
  }

  /**
   * One steel.
   *
   * @param citation of a source's key
   */
  public String page(SteelReport r, Function<String, Optional<String>> citation) {
    Shown shown = new Shown(units);
    String analysis =
        r.analysisPct().entrySet().stream()
            .map(e -> e.getKey() + " " + trimmed(e.getValue()))
            .collect(Collectors.joining(", "));
    Page page =
        new Page()
            .say(r.designation() + ", " + r.category() + ": " + analysis + " wt%, the rest iron.");
    if (!r.aliases().isEmpty()) {
      page.say("Also known as " + String.join(", ", r.aliases()) + ".");
    }
    page.heading("Temperatures").table(limits(r, shown));
    if (r.msC().isPresent()) {
      page.say(
          "Ms is for "
              + Shown.percent(r.dissolvedCarbonPct())
              + " % carbon dissolved at "
              + shown.temperature(r.hardenC())
              + ".");
    }
    r.unknown().values().stream()
        .distinct()
        .forEach(why -> page.say("Unknown (" + names(r, why) + "): " + why + "."));
    if (!r.ranges().isEmpty()) {
      Table ranges = new Table("", shown.temperatureHeads("from"), shown.temperatureHeads("to"));
      r.ranges()
          .forEach(
              (name, range) ->
                  ranges.row(
                      name,
                      shown.temperatureCells(range.lowC()),
                      shown.temperatureCells(range.highC())));
      page.heading("Published ranges").table(ranges);
    }
    formulas(page, r, shown);
    if (!r.notes().isBlank()) {
      page.heading("Notes").say(r.notes());
    }
    List<String> sources = sources(r, citation);
    if (!sources.isEmpty()) {
      page.heading("Sources").items(sources);
    }
    return page.toString();
  }

  private static String names(SteelReport r, String why) {
    Map<String, String> shown = Map.of("ac1C", "Ac1", "ac3OrAccmC", r.upper(), "msC", "Ms");
    return r.unknown().entrySet().stream()
        .filter(e -> e.getValue().equals(why))
        .map(e -> shown.getOrDefault(e.getKey(), e.getKey()))
        .collect(Collectors.joining(", "));
  }

  private static Table limits(SteelReport r, Shown shown) {
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
      Table table, Shown shown, String name, Optional<SteelReport.Quantity> quantity) {
    table.row(
        name,
        cells(shown, quantity.map(SteelReport.Quantity::value)),
        cells(shown, quantity.map(SteelReport.Quantity::low)),
        cells(shown, quantity.map(SteelReport.Quantity::high)),
        quantity.map(SteelReport.Quantity::source).orElse(UNKNOWN));
  }

  private static List<String> cells(Shown shown, Optional<Double> celsius) {
    return celsius.map(shown::temperatureCells).orElseGet(shown::unknownTemperature);
  }

  private static void formulas(Page page, SteelReport r, Shown shown) {
    Table table = new Table("formula", "gives", shown.temperatureHeads("at"), "range", "used for");
    for (SteelReport.Formula f : r.formulas()) {
      table.row(
          f.name(),
          f.gives(),
          cells(shown, f.valueC()),
          f.outsideRange() ? "outside" : "",
          f.used().orElse(""));
    }
    page.heading("Every formula side by side").table(table);
    diffusivities(page, r, shown);
    page.items(r.chosen());
  }

  private static void diffusivities(Page page, SteelReport r, Shown shown) {
    page.heading("Speed of carbon (diffusivity) side by side, in millionths of mm2 a second");
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
      page.table(table);
    }
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
