package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import seamsoak.advice.SteelReport;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;

/** One steel, or all of them, in words. */
public record SteelText(UnitSystem units) {

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
    page.heading("Temperatures")
        .table(limits(r, shown))
        .say(
            "Ms is for "
                + Shown.percent(r.dissolvedCarbonPct())
                + " % carbon dissolved at "
                + shown.temperature(r.hardenC())
                + ".");
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
    quantity(table, shown, "solidus", r.solidusC());
    quantity(table, shown, "forge up to", r.highestForgingC());
    quantity(table, shown, "burns", r.burningC());
    quantity(table, shown, "no soak above", r.refusalC());
    return table;
  }

  private static void quantity(
      Table table, Shown shown, String name, SteelReport.Quantity quantity) {
    table.row(
        name,
        shown.temperatureCells(quantity.value()),
        shown.temperatureCells(quantity.low()),
        shown.temperatureCells(quantity.high()),
        quantity.source());
  }

  private static void formulas(Page page, SteelReport r, Shown shown) {
    Table table = new Table("formula", "gives", shown.temperatureHeads("at"), "range", "used for");
    for (SteelReport.Formula f : r.formulas()) {
      table.row(
          f.name(),
          f.gives(),
          shown.temperatureCells(f.valueC()),
          f.outsideRange() ? "outside" : "",
          f.used().orElse(""));
    }
    page.heading("Every formula side by side").table(table);
    page.items(r.chosen());
  }

  private static List<String> sources(SteelReport r, Function<String, Optional<String>> citation) {
    Set<String> keys = new LinkedHashSet<>();
    for (SteelReport.Quantity q :
        List.of(
            r.ac1C(), r.ac3OrAccmC(), r.msC(), r.solidusC(), r.highestForgingC(), r.burningC())) {
      keys.addAll(List.of(q.source().split(",\\s*")));
    }
    List<String> all = new ArrayList<>();
    keys.forEach(k -> citation.apply(k).ifPresent(c -> all.add(k + ": " + c)));
    return all;
  }

  private static String trimmed(double value) {
    return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
