package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.Outcome;
import seamsoak.schedule.ScheduleAdvice.Quenched;
import seamsoak.unit.UnitSystem;
import seamsoak.words.BladeWords;

/** What the schedule makes of the steel: how hard the blade comes out, and what it is by then. */
record BladeText(Advice advice, UnitSystem units) {

  /** How hard the blade comes out. */
  Table bladeTable() {
    Table table = new Table("steel", "edge", "face", "middle", "edge tempered");
    for (Quenched q : quenched()) {
      table.row(
          q.steel(),
          Numbers.number(q.edgeHrc(), 0),
          Numbers.number(q.faceHrc(), 0),
          Numbers.number(q.coreHrc(), 0),
          Numbers.number(q.temperedHrc(), 0));
    }
    return table.captioned(
        blade()
            .map(
                b ->
                    ("The blade, %s thick, from %s in %s: HRC at the thin edge, at the spine's face"
                            + " and middle, give or take 2")
                        .formatted(
                            shown().length(b.thicknessMm()),
                            shown().temperature(b.hardenC()),
                            b.quenchantName()))
            .orElse("The blade"));
  }

  /** Air and each quenchant at hand, held against what each steel needs. */
  Table mediaTable() {
    List<Object> heads = new ArrayList<>(List.of("in", "takes s"));
    heads.add(shown().temperatureHeads("core hotter by"));
    quenched()
        .forEach(q -> heads.add(q.steel() + ": " + Numbers.number(q.longestSeconds(), 1) + " s"));
    Table table = new Table(heads.toArray());
    for (ScheduleAdvice.Medium m : blade().map(Outcome::media).orElse(List.of())) {
      table.row(
          m.name() + (m.chosen() ? " *" : ""),
          Numbers.number(m.takesSeconds(), m.takesSeconds() < 10 ? 1 : 0),
          shown().pick(degrees(1.8 * m.differenceC()), degrees(m.differenceC())),
          m.middles().stream().map(BladeWords::hardens).toList());
    }
    return table.captioned(
        "How long its middle takes from "
            + shown().temperature(800)
            + " to "
            + shown().temperature(500)
            + ", how much hotter it gets than the face, and whether it hardens, against the time"
            + " that each steel allows; * taken here");
  }

  private static String degrees(double difference) {
    return Numbers.number(5 * Math.round(difference / 5), 0);
  }

  /** What decides that. */
  Table quenchTable() {
    Table table =
        new Table("steel", "C solved %", shown().temperatureHeads("Ms"), "austenite %", "may s");
    for (Quenched q : quenched()) {
      table.row(
          q.steel(),
          Numbers.percent(q.dissolvedPct()),
          shown().temperatureCells(q.msC()),
          Numbers.number(q.retainedPct(), 0),
          Numbers.number(q.longestSeconds(), 1));
    }
    return table.captioned(
        "In the quench: carbon in solution, start of martensite, austenite left, and how long the"
            + " middle may take");
  }

  /** Structure and hardness of each steel, said again only where they change. */
  Table structuresTable() {
    Table table = new Table("after", "steel", "structure", "HRC");
    for (After a : changes()) {
      for (Metal m : a.metals()) {
        table.row(
            a.step().words(),
            m.steel(),
            BladeWords.structure(m),
            m.hrc().map(h -> Numbers.number(h, 0)).orElse(Numbers.UNKNOWN));
      }
    }
    return table.captioned("What it is made of by then, and how hard, give or take 2 HRC");
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

  private Numbers shown() {
    return new Numbers(units);
  }
}
