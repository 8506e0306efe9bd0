package seamsoak.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import seamsoak.chart.Figure;
import seamsoak.chart.SectionFigure;
import seamsoak.plan.Advice;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.state.SeamProfile;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ConflictWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.SeamWords;
import seamsoak.words.StageWords;
import seamsoak.words.StepWords;
import seamsoak.words.StopWords;

/**
 * What is said of a billet, a section for each subject.
 *
 * @param figures the charts in order, each with its SVG file; each is shown with its subject
 */
record BilletSections(Advice advice, UnitSystem units, Map<Figure, byte[]> figures) {
  private Shown shown() {
    return new Shown(units);
  }

  /** The lines as they are, and how they came to be so. */
  Section lines() {
    LinesText text = new LinesText(shown());
    Section section =
        Section.of("lines", "The lines and how they fade").words(text.said(advice.soak()));
    if (advice.soak().lines().isEmpty()) {
      return section;
    }
    section = picture(section.table(text.table(advice.soak())), "fading");
    section = section.table(text.faded(advice.history())).wide(text.widths(advice.history()));
    section = picture(section, "seam");
    return advice.seam().map(this::seamTable).map(section::table).orElse(section);
  }

  private Table seamTable(SeamProfile seam) {
    Table table = new Table("stage", "missing %", "contrast");
    for (SeamProfile.AtStage s : seam.stages()) {
      table.row(
          SeamWords.moment(s.stage()),
          Shown.percent(s.missingPct()),
          Shown.number(s.contrast(), 2));
    }
    return table.captioned(
        "Carbon missing at "
            + SeamWords.says(seam.seams())
            + ", wt%, against "
            + Shown.percent(seam.farPct())
            + " far from it; the line shows from a contrast of 1 on");
  }

  Section billet() {
    BilletText text = new BilletText(advice, shown());
    Section section = Section.of("billet", "The billet after each step");
    int drawn = 0;
    for (Figure f : figures.keySet()) {
      if (f instanceof SectionFigure sections) {
        int next = drawn + sections.panels().size();
        section = picture(section, f.id()).table(text.sizes(drawn, next));
        drawn = next;
      }
    }
    if (drawn == 0) {
      section = section.table(text.sizes());
    }
    section = advice.preform().map(text::preform).map(section::words).orElse(section);
    return section.table(new CarbonText(advice).table());
  }

  Section soak() {
    SoakText text = new SoakText(advice, units);
    Section section = Section.of("soak", "Soaks, and what each costs");
    if (text.noneNeeded()) {
      return section.words(text.soak());
    }
    section = picture(section, "soak").table(text.table()).words(text.legend());
    return text.table().body().isEmpty() ? section.words(SoakText.nowhere()) : section;
  }

  Section schedule() {
    ScheduleText text = new ScheduleText(advice, units);
    BladeText blade = new BladeText(advice, units);
    Section section =
        picture(Section.of("schedule", "The schedule"), "schedule").table(text.heatsTable());
    if (!advice.schedule().conflicts().isEmpty()) {
      section = section.head("Conflicts, and what to do").terms(conflicts());
    }
    section =
        section
            .head("Step by step")
            .terms(steps())
            .table(blade.bladeTable())
            .table(blade.mediaTable())
            .table(blade.quenchTable())
            .table(text.afterTable())
            .table(blade.structuresTable())
            .table(text.criticalTable())
            .table(text.magnetTable());
    return advice.hardStops().isEmpty()
        ? section.table(new ProgramText(advice, units).table())
        : section;
  }

  private List<Part.Term> conflicts() {
    return advice.schedule().conflicts().stream()
        .map(new ConflictWords(units)::said)
        .map(
            c ->
                new Part.Term(
                    c.about(),
                    List.of(SoakText.capital(sentence(c.says())), "Do: " + sentence(c.todo()))))
        .toList();
  }

  /** A sentence or two each. */
  static List<String> conflictsInShort(Advice advice, UnitSystem units) {
    return advice.schedule().conflicts().stream()
        .map(new ConflictWords(units)::said)
        .map(c -> SoakText.capital(sentence(c.says())) + " Do: " + sentence(c.todo()))
        .toList();
  }

  static String sentence(String words) {
    return words.endsWith(".") ? words : words + ".";
  }

  /** The steps one by one: what to do, why, what to look for. */
  private List<Part.Term> steps() {
    StepWords words = new StepWords(units);
    List<Part.Term> all = new ArrayList<>();
    for (ScheduleAdvice.Step s : advice.schedule().steps()) {
      List<String> said = new ArrayList<>();
      s.refused().map(new StopWords(units)::says).ifPresent(r -> said.add("Refused. " + r));
      StepWords.Order task = words.said(s.task());
      said.add(task.doing() + ".");
      said.add("Why: " + task.why() + ".");
      words.checks(s.checks()).forEach(c -> said.add("Check: " + c + "."));
      all.add(new Part.Term(all.size() + 1 + ". " + s.step().words() + place(s), said));
    }
    return all;
  }

  private String place(ScheduleAdvice.Step s) {
    String hold = s.holdMinutes().map(m -> shown().time(m) + " once the core is there").orElse("");
    String in = s.in() == Heater.BENCH ? "" : s.in().word();
    String both = in + (in.isEmpty() || hold.isEmpty() ? "" : ", ") + hold;
    return both.isEmpty() ? "" : " (" + both + ")";
  }

  Section more() {
    return Section.of("narrow", "What else to know").items(new SoakText(advice, units).notes());
  }

  /** Remarks on the steps, and on the schedule where that is told. */
  Section remarks(boolean schedule) {
    List<String> all = new ArrayList<>();
    advice
        .history()
        .forEach(
            s ->
                s.remarks()
                    .forEach(
                        r -> all.add("step " + LinesText.step(s) + ": " + StageWords.remark(r))));
    if (schedule) {
      advice.schedule().remarks().stream()
          .map(new ScheduleRemarkWords(units)::says)
          .forEach(all::add);
    }
    return Section.of("remarks", "Remarks").items(all);
  }

  Section assumed() {
    return Section.of("assumed", "Assumed, since the file does not say")
        .items(new BilletText(advice, shown()).assumed());
  }

  private Section picture(Section section, String id) {
    return figures.entrySet().stream()
        .filter(f -> f.getKey().id().equals(id))
        .findFirst()
        .map(f -> section.with(new Part.Picture(inline(f.getValue()))))
        .orElse(section);
  }

  /** The SVG as an element: without the declaration that only a file of its own has. */
  private static String inline(byte[] file) {
    String svg = new String(file, StandardCharsets.UTF_8);
    return svg.substring(svg.indexOf("<svg")).strip();
  }
}
