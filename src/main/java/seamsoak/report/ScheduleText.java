package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.advice.Advice;
import seamsoak.advice.ScheduleAdvice;
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
        .then(more())
        .then(new BilletText(advice, shown()).defaults())
        .toString();
  }

  /** All but the answer and the table of heats. */
  String more() {
    return new Page()
        .then(conflicts())
        .then(new StepsText(advice, shown()).page())
        .then(blade())
        .then(after())
        .then(metals())
        .then(critical())
        .then(new Page().table(magnetTable()).toString())
        .then(new ProgramText(advice, units).page())
        .toString();
  }

  private Shown shown() {
    return new Shown(units);
  }

  private List<Segment> segments() {
    return advice.schedule().segments();
  }

  private String answer() {
    Page page = new Page();
    advice.hardStops().forEach(stop -> page.say("Do not do this. " + stop));
    if (!advice.soak().clears()) {
      page.say(
          "No soak clears the lines within what is allowed; this is the schedule without one.");
    }
    List<String> parts = new ArrayList<>();
    long cycles =
        advice.schedule().steps().stream().filter(s -> s.step().startsWith("refine")).count();
    String last = "";
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
    return page.say(first.substring(0, 1).toUpperCase(Locale.ROOT) + first.substring(1) + ".")
        .toString();
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
                part(parts, "hold")
                    .map(h -> shown.temperatureCells(h.toC()))
                    .orElseGet(shown::unknownTemperature),
                minutes(parts, "rise"),
                minutes(parts, "hold"),
                then(parts),
                minutes(parts, "cool")));
    return table.captioned("The schedule; the rise is for a kiln that is at heat");
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

  /** What the steels do not agree on, and what to do. */
  private String conflicts() {
    Page page = new Page();
    if (!advice.schedule().conflicts().isEmpty()) {
      page.say("Conflicts, and what to do");
      advice
          .schedule()
          .conflicts()
          .forEach(c -> page.point("- " + c.says() + ".").below("Do: " + c.todo() + "."));
    }
    return page.toString();
  }

  private String blade() {
    return advice.schedule().blade().isEmpty()
        ? ""
        : new Page()
            .table(bladeTable())
            .then(new Page().table(quenchTable()).toString())
            .toString();
  }

  /** How hard the blade comes out. */
  Table bladeTable() {
    Table table = new Table("steel", "edge", "face", "middle", "edge tempered");
    advice
        .schedule()
        .blade()
        .ifPresent(
            b ->
                b.steels()
                    .forEach(
                        q ->
                            table.row(
                                q.steel(),
                                Shown.number(q.edgeHrc(), 0),
                                Shown.number(q.faceHrc(), 0),
                                Shown.number(q.coreHrc(), 0),
                                Shown.number(q.temperedHrc(), 0))));
    return table.captioned(
        advice
            .schedule()
            .blade()
            .map(
                b ->
                    "The blade, "
                        + shown().length(b.thicknessMm())
                        + " thick, from "
                        + shown().temperature(b.hardenC())
                        + " in "
                        + b.quenchantName()
                        + ": HRC at the thin edge, at the spine's face and middle, give or take 2")
            .orElse("The blade"));
  }

  /** What decides that. */
  Table quenchTable() {
    Table table =
        new Table(
            "steel",
            "C solved %",
            shown().temperatureHeads("Ms"),
            "austenite %",
            "may s",
            "takes s");
    advice
        .schedule()
        .blade()
        .ifPresent(
            b ->
                b.steels()
                    .forEach(
                        q ->
                            table.row(
                                q.steel(),
                                Shown.percent(q.dissolvedPct()),
                                shown().temperatureCells(q.msC()),
                                Shown.number(q.retainedPct(), 0),
                                Shown.number(q.longestSeconds(), 1),
                                Shown.number(q.takesSeconds(), 1))));
    return table.captioned(
        "In the quench: carbon in solution, start of martensite, austenite left; how long the middle"
            + " may take from "
            + shown().temperature(800)
            + " to "
            + shown().temperature(500)
            + ", and takes");
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

  /** Structure and hardness of each steel, said again only where they change. */
  String metals() {
    Page page = new Page().say("What it is made of by then, and how hard, give or take 2 HRC");
    List<ScheduleAdvice.Metal> before = List.of();
    for (After a : advice.schedule().after()) {
      if (!a.metals().equals(before)) {
        page.item(
            a.step(),
            13,
            a.metals().stream().map(ScheduleText::metal).collect(Collectors.joining("; ")) + ".");
      }
      before = a.metals();
    }
    return page.toString();
  }

  private static String metal(ScheduleAdvice.Metal m) {
    return m.steel()
        + " "
        + m.structure()
        + m.hrc().map(h -> ", " + Shown.number(h, 0) + " HRC").orElse("");
  }

  /** The same as a table, for a page that is wide enough. */
  Table metalsTable() {
    Table table = new Table("after", "steel", "structure", "HRC");
    List<ScheduleAdvice.Metal> before = List.of();
    for (After a : advice.schedule().after()) {
      if (!a.metals().equals(before)) {
        a.metals()
            .forEach(
                m ->
                    table.row(
                        a.step(),
                        m.steel(),
                        m.structure(),
                        m.hrc().map(h -> Shown.number(h, 0)).orElse(Shown.UNKNOWN)));
      }
      before = a.metals();
    }
    return table.captioned("Structure and hardness to expect");
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
        "What is left: sets of seams that show, the deepest, ASTM grain number, skin to grind");
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
