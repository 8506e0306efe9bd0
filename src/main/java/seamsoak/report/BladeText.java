package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.advice.Advice;
import seamsoak.advice.ScheduleAdvice.After;
import seamsoak.advice.ScheduleAdvice.Metal;
import seamsoak.advice.ScheduleAdvice.Outcome;
import seamsoak.advice.ScheduleAdvice.Quenched;
import seamsoak.unit.UnitSystem;

/** What the schedule makes of the steel: how hard the blade comes out, and what it is by then. */
record BladeText(Advice advice, UnitSystem units) {

  /** How hard the blade comes out and what decides that; empty where nothing is hardened. */
  String hardening() {
    return blade().isEmpty()
        ? ""
        : new Page()
            .table(bladeTable())
            .then(new Page().table(quenchTable()).toString())
            .toString();
  }

  /** How hard the blade comes out. */
  Table bladeTable() {
    Table table = new Table("steel", "edge", "face", "middle", "edge tempered");
    for (Quenched q : quenched()) {
      table.row(
          q.steel(),
          Shown.number(q.edgeHrc(), 0),
          Shown.number(q.faceHrc(), 0),
          Shown.number(q.coreHrc(), 0),
          Shown.number(q.temperedHrc(), 0));
    }
    return table.captioned(
        blade()
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
    for (Quenched q : quenched()) {
      table.row(
          q.steel(),
          Shown.percent(q.dissolvedPct()),
          shown().temperatureCells(q.msC()),
          Shown.number(q.retainedPct(), 0),
          Shown.number(q.longestSeconds(), 1),
          Shown.number(q.takesSeconds(), 1));
    }
    return table.captioned(
        "In the quench: carbon in solution, start of martensite, austenite left; how long the middle"
            + " may take from "
            + shown().temperature(800)
            + " to "
            + shown().temperature(500)
            + ", and takes");
  }

  /** Structure and hardness of each steel, said again only where they change. */
  String structures() {
    Page page = new Page().say("What it is made of by then, and how hard, give or take 2 HRC");
    for (After a : changes()) {
      page.item(
          a.step(),
          13,
          a.metals().stream().map(BladeText::said).collect(Collectors.joining("; ")) + ".");
    }
    return page.toString();
  }

  private static String said(Metal m) {
    return m.steel()
        + " "
        + m.structure()
        + m.hrc().map(h -> ", " + Shown.number(h, 0) + " HRC").orElse("");
  }

  /** The same as a table, for a page that is wide enough. */
  Table structuresTable() {
    Table table = new Table("after", "steel", "structure", "HRC");
    for (After a : changes()) {
      for (Metal m : a.metals()) {
        table.row(
            a.step(),
            m.steel(),
            m.structure(),
            m.hrc().map(h -> Shown.number(h, 0)).orElse(Shown.UNKNOWN));
      }
    }
    return table.captioned("Structure and hardness to expect");
  }

  /** The steps after which some steel is another than before. */
  private List<After> changes() {
    List<After> changes = new ArrayList<>();
    List<Metal> before = List.of();
    for (After a : advice.schedule().after()) {
      if (!a.metals().equals(before)) {
        changes.add(a);
      }
      before = a.metals();
    }
    return changes;
  }

  private Optional<Outcome> blade() {
    return advice.schedule().blade();
  }

  private List<Quenched> quenched() {
    return blade().map(Outcome::steels).orElse(List.of());
  }

  private Shown shown() {
    return new Shown(units);
  }
}
