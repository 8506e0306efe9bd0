package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.ScheduleAdvice.Medium;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.Outcome;
import seamsoak.schedule.ScheduleAdvice.Quenched;
import seamsoak.schedule.StepName;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.BladeWords;

/** What the schedule makes of the steel: how hard the blade comes out, and what it is by then. */
record BladeText(Advice advice, UnitSystem units) {

  /** How hard the blade comes out. */
  Table bladeTable() {
    return Columns.of(quenched(), units)
        .words("steel", Quenched::steel)
        .words("edge", q -> Amounts.range(q.band().edgeLow(), q.band().edgeHigh()))
        .words("face", q -> Amounts.range(q.band().faceLow(), q.band().faceHigh()))
        .words("middle", q -> Amounts.range(q.band().coreLow(), q.band().coreHigh()))
        .words("edge tempered", q -> Amounts.range(q.band().temperedLow(), q.band().temperedHigh()))
        .captioned(
            blade()
                .map(
                    b ->
                        ("The blade, %s thick, from %s in %s: HRC at the thin edge, at the spine's face"
                                + " and middle")
                            .formatted(
                                amounts().millimetres(b.thicknessMm()),
                                amounts().heat(b.hardenC()),
                                b.quenchantName()))
                .orElse("The blade"));
  }

  /** Air and each quenchant at hand, held against what each steel needs. */
  Table mediaTable() {
    List<Medium> media = blade().map(Outcome::media).orElse(List.of());
    Columns<Medium> table =
        Columns.of(media, units)
            .words(
                "in",
                m -> m.name() + (m.chosen() ? " *" : "") + (m.atHand() ? "" : ", not at hand"))
            .words("takes s", m -> Amounts.number(m.takesSeconds(), m.takesSeconds() < 10 ? 1 : 0))
            .both(
                "core hotter by",
                "F",
                "C",
                m -> Columns.toFive(1.8 * m.differenceC()),
                m -> Columns.toFive(m.differenceC()));
    for (int i = 0; i < quenched().size(); i++) {
      int steel = i;
      table.words(quenched().get(i).steel(), m -> BladeWords.inMedium(m.steels().get(steel)));
    }
    return table.captioned(
        "How long its middle takes from "
            + amounts().heat(800)
            + " to "
            + amounts().heat(500)
            + ", how much hotter it gets than the face, and of each steel how hard a thin"
            + " edge comes out (HRC) and whether the middle hardens; * taken here");
  }

  /** What decides that. */
  Table quenchTable() {
    return Columns.of(quenched(), units)
        .words("steel", Quenched::steel)
        .percent("C dissolved %", Quenched::dissolvedPct)
        .heat("Ms", Quenched::msC)
        .number("austenite %", 0, Quenched::retainedPct)
        .words("may be %", q -> Amounts.range(q.retainedLowPct(), q.retainedHighPct()))
        .number("allowed s", 1, Quenched::longestSeconds)
        .captioned(
            "In the quench: carbon in solution, start of martensite, austenite left, and how long"
                + " the middle may take and be hard throughout");
  }

  /** Structure and hardness of each steel, said again only where they change. */
  Table structuresTable() {
    record Row(StepName step, Metal metal) {}
    List<Row> rows = new ArrayList<>();
    List<Metal> before = List.of();
    for (After a : advice.schedule().after()) {
      if (!a.metals().equals(before)) {
        a.metals().forEach(m -> rows.add(new Row(a.step(), m)));
      }
      before = a.metals();
    }
    return Columns.of(rows, units)
        .words("after", r -> r.step().words())
        .words("steel", r -> r.metal().steel())
        .words("structure", r -> BladeWords.structure(r.metal()))
        .numberIfKnown("HRC", 0, r -> r.metal().hrc())
        .numberIfKnown("give or take", 0, r -> r.metal().hrcGiveOrTake())
        .captioned("What it is made of by then, and how hard");
  }

  private Optional<Outcome> blade() {
    return advice.schedule().blade();
  }

  private List<Quenched> quenched() {
    return blade().map(Outcome::steels).orElse(List.of());
  }

  private Amounts amounts() {
    return new Amounts(units);
  }
}
