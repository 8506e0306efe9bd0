package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.advice.Advice;
import seamsoak.advice.ScheduleAdvice.After;
import seamsoak.advice.ScheduleAdvice.CriticalTemperatures;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.unit.UnitSystem;

/** The schedule in words: the heats as a table, why and what to check, what comes of it. */
public record ScheduleText(Advice advice, UnitSystem units) {

  /** The whole answer of the command. */
  public String page() {
    return new Page()
        .then(answer())
        .then(heats())
        .then(why())
        .then(after())
        .then(critical())
        .then(new BilletText(advice, shown()).defaults())
        .toString();
  }

  private Shown shown() {
    return new Shown(units);
  }

  private List<Segment> segments() {
    return advice.schedule().segments();
  }

  private String answer() {
    List<String> parts = new ArrayList<>();
    for (Segment s : segments()) {
      if (s.kind().equals("hold")) {
        parts.add(s.step() + " at " + shown().temperature(s.toC()));
      }
    }
    Page page = new Page();
    advice.hardStops().forEach(stop -> page.say("Do not do this. " + stop));
    if (!advice.soak().clears()) {
      page.say(
          "No soak clears the lines within what is allowed; this is the schedule without one.");
    }
    String first = String.join(", ", parts);
    return page.say(first.substring(0, 1).toUpperCase(Locale.ROOT) + first.substring(1) + ".")
        .toString();
  }

  /** One row for each step. */
  String heats() {
    return new Page().table(heatsTable()).toString();
  }

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
                shown.temperatureCells(part(parts, "hold").map(Segment::toC).orElse(0.0)),
                minutes(parts, "rise"),
                minutes(parts, "hold"),
                part(parts, "cool").map(Segment::cool).orElse(""),
                minutes(parts, "cool")));
    return table.captioned("The schedule; the rise is for a kiln that is at heat");
  }

  private static Optional<Segment> part(List<Segment> parts, String kind) {
    return parts.stream().filter(s -> s.kind().equals(kind)).findFirst();
  }

  private static String minutes(List<Segment> parts, String kind) {
    return part(parts, kind).map(s -> Shown.number(s.minutes(), 0)).orElse("-");
  }

  /** Reason and check of each part, steps that share them named together. */
  String why() {
    Page page = new Page().say("Why, and what to look for");
    for (String kind : List.of("hold", "rise", "cool")) {
      Map<List<String>, List<String>> said = new LinkedHashMap<>();
      for (Segment s : segments()) {
        if (s.kind().equals(kind)) {
          said.computeIfAbsent(List.of(s.why(), s.check()), k -> new ArrayList<>()).add(s.step());
        }
      }
      said.forEach(
          (words, steps) -> {
            String name = kind.equals("hold") ? String.join(", ", steps) : "every " + kind;
            String check = words.get(1).isEmpty() ? "" : ". Check: " + words.get(1);
            page.item(name, 18, words.get(0) + check + ".");
          });
    }
    return page.toString();
  }

  /** What is left after each step. */
  String after() {
    return new Page().table(afterTable()).toString();
  }

  Table afterTable() {
    Shown shown = shown();
    Table table =
        new Table("after", "lines that show", "carbon short %", "grain", shown.lengthHeads("skin"));
    for (After a : advice.schedule().after()) {
      table.row(
          a.step(),
          Integer.toString(a.linesVisible()),
          Shown.percent(a.deepestDipPct()),
          Shown.number(a.grainAstm(), 1),
          shown.lengthCells(Optional.of(a.skinMm())));
    }
    return table.captioned(
        "What is left: sets of seams that show, the deepest, ASTM grain size number, skin");
  }

  private String critical() {
    return new Page().table(criticalTable()).toString();
  }

  Table criticalTable() {
    Shown shown = shown();
    Table table =
        new Table(
            "steel",
            "C %",
            shown.temperatureHeads("Ac1"),
            shown.temperatureHeads("all austenite"),
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
