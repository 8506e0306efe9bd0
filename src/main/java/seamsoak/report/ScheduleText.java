package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.ScheduleAdvice.CriticalTemperatures;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;

/** The schedule in words: the heats as a table, why and what to check, what comes of it. */
record ScheduleText(Advice advice, UnitSystem units) {
  /** More do not fit beside the rest. */
  private static final int MOST_STEELS = 3;

  private static final Set<String> UNHARDENED = Set.of("beyond the formulas", "nothing hardens");

  private Shown shown() {
    return new Shown(units);
  }

  private List<Segment> segments() {
    return advice.schedule().segments();
  }

  /** The heats in one sentence. */
  List<String> answer() {
    List<String> all = new ArrayList<>();
    if (!advice.soak().clears()) {
      all.add("No soak clears the lines within what is allowed; this is the schedule without one.");
    }
    all.addAll(told());
    return all;
  }

  /** The same where the soak has been told. */
  List<String> told() {
    List<String> parts = new ArrayList<>();
    long cycles =
        advice.schedule().steps().stream().filter(s -> s.step().startsWith("refine")).count();
    String last = "";
    slowly().ifPresent(parts::add);
    for (ScheduleAdvice.Step s : advice.schedule().steps()) {
      if (s.temperatureC().isEmpty() || s.step().equals("temper 2")) {
        continue;
      }
      String at = shown().temperature(s.temperatureC().get());
      if (s.step().startsWith("refine")) {
        last = (cycles == 1 ? "one cycle at " : cycles + " cycles down to ") + at;
        continue;
      }
      if (!last.isEmpty()) {
        parts.add(last);
        last = "";
      }
      parts.add(
          switch (s.step()) {
            case "soak" -> "soak at " + at + " for " + shown().time(s.holdMinutes().orElse(0.0));
            case "harden" ->
                "harden from "
                    + at
                    + advice.schedule().blade().map(b -> " in " + b.quenchantName()).orElse("");
            case "temper 1" -> "temper twice at " + at + edge();
            default -> s.step() + " at " + at;
          });
    }
    if (!last.isEmpty()) {
      parts.add(last);
    }
    String first = parts.isEmpty() ? "Nothing to do" : String.join(", ", parts);
    List<String> all = new ArrayList<>(List.of(SoakText.capital(first) + "."));
    if (advice.schedule().blade().isEmpty()) {
      all.addAll(unhardened());
    }
    return all;
  }

  /** A cool-down that is more than laying the billet aside. */
  private Optional<String> slowly() {
    List<Segment> down = segments().stream().filter(s -> s.step().equals("cool-down")).toList();
    if (down.isEmpty() || down.get(0).cool().equals("air")) {
      return Optional.empty();
    }
    return Optional.of(
        down.get(0).in().equals("kiln")
            ? "from the last forging heat into the kiln at "
                + shown().temperature(down.get(0).toC())
            : "bury it in dry vermiculite or ash after the last forging heat");
  }

  /** Why nothing is hardened. */
  private List<String> unhardened() {
    return advice.schedule().conflicts().stream()
        .filter(c -> UNHARDENED.contains(c.about()))
        .map(c -> "It is not hardened here: " + c.says() + ". " + SoakText.capital(c.todo()) + ".")
        .toList();
  }

  private String edge() {
    return advice
        .schedule()
        .blade()
        .flatMap(
            b ->
                b.steels().stream()
                    .filter(q -> q.steel().equals(b.edge()))
                    .findFirst()
                    .map(q -> ", for about " + Shown.number(q.temperedHrc(), 0) + " HRC"))
        .orElse("");
  }

  /** One row for each step. */
  Table heatsTable() {
    Shown shown = shown();
    Table table =
        new Table(
            "step", shown.temperatureHeads("to"), "rise min", "hold min", "then", "down in min");
    Map<String, List<Segment>> steps = new LinkedHashMap<>();
    segments().forEach(s -> steps.computeIfAbsent(s.step(), k -> new ArrayList<>()).add(s));
    steps.forEach(
        (step, parts) ->
            table.row(
                step,
                part(parts, "hold")
                    .map(h -> shown.temperatureCells(h.toC()))
                    .orElseGet(shown::unknownTemperature),
                minutes(parts, "rise"),
                minutes(parts, "hold"),
                then(parts),
                minutes(parts, "cool")));
    return table.captioned(
        "The schedule; the rise is for a kiln that is at heat, down in air is to black");
  }

  private static Optional<Segment> part(List<Segment> parts, String kind) {
    return parts.stream().filter(s -> s.kind().equals(kind)).findFirst();
  }

  private static String then(List<Segment> parts) {
    return parts.stream()
        .map(Segment::cool)
        .filter(c -> !c.isEmpty())
        .distinct()
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  private static String minutes(List<Segment> parts, String kind) {
    double sum =
        parts.stream().filter(s -> s.kind().equals(kind)).mapToDouble(Segment::minutes).sum();
    return sum == 0 ? "-" : sum < 0.95 ? Shown.number(sum, 1) : Shown.number(sum, 0);
  }

  /** Where each steel lets go of the magnet. */
  Table magnetTable() {
    Table table =
        new Table("steel", shown().temperatureHeads("from"), shown().temperatureHeads("to"));
    for (CriticalTemperatures c : advice.schedule().critical()) {
      table.row(
          c.steel(),
          shown().temperatureCells(c.magnetLowC()),
          shown().temperatureCells(c.magnetHighC()));
    }
    return table.captioned("Where the magnet lets go on the way up");
  }

  /** What is left after each step. */
  Table afterTable() {
    Shown shown = shown();
    List<String> steels =
        advice.schedule().after().stream()
            .flatMap(a -> a.layers().stream())
            .map(StageReport.LayerCarbon::steel)
            .distinct()
            .limit(MOST_STEELS)
            .toList();
    Table table =
        new Table(
            "after",
            "lines",
            "short C %",
            "grain",
            shown.lengthHeads("skin"),
            steels.stream().map(s -> "C % " + s).toList());
    for (After a : advice.schedule().after()) {
      table.row(
          a.step(),
          Integer.toString(a.linesVisible()),
          Shown.percent(a.deepestMissingPct()),
          Shown.number(a.grainAstm(), 1),
          shown.lengthCells(Optional.of(a.skinMm())),
          steels.stream().map(s -> carbon(a, s)).toList());
    }
    return table.captioned(
        "What is left: sets of seams that show, carbon missing at the deepest, ASTM grain number, skin"
            + " to grind, mean carbon of each steel");
  }

  private static String carbon(After after, String steel) {
    return after.layers().stream()
        .filter(l -> l.steel().equals(steel))
        .findFirst()
        .map(l -> Shown.percent(l.meanPct()))
        .orElse(Shown.UNKNOWN);
  }

  Table criticalTable() {
    Shown shown = shown();
    Table table =
        new Table(
            "steel",
            "C %",
            shown.temperatureHeads("Ac1"),
            shown.temperatureHeads("full"),
            shown.temperatureHeads("Ms"));
    for (CriticalTemperatures c : advice.schedule().critical()) {
      table.row(
          c.steel(),
          Shown.percent(c.carbonPct()),
          shown.temperatureCells(c.ac1C()),
          shown.temperatureCells(c.upperC()),
          shown.temperatureCells(c.msC()));
    }
    return table.captioned("Critical temperatures with the carbon that each steel has by then");
  }
}
