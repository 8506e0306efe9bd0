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
import seamsoak.words.Amounts;
import seamsoak.words.ConflictWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.SeamWords;
import seamsoak.words.StageWords;
import seamsoak.words.StepWords;
import seamsoak.words.StopWords;

/**
 * What is said of a billet, a chapter for each subject.
 *
 * @param figures the charts in order, each with its SVG file; each is shown with its subject
 */
record BilletChapters(Advice advice, UnitSystem units, Map<Figure, byte[]> figures) {
  private Amounts amounts() {
    return new Amounts(units);
  }

  /** The lines as they are, and how they came to be so. */
  Chapter lines() {
    LinesText text = new LinesText(amounts());
    Chapter chapter =
        Chapter.of("lines", "The lines and how they fade").words(text.said(advice.soak()));
    if (advice.soak().lines().isEmpty()) {
      return chapter;
    }
    chapter = picture(chapter.table(text.table(advice.soak())), "fading");
    chapter = chapter.table(text.faded(advice.history())).wide(text.widths(advice.history()));
    chapter = picture(chapter, "seam");
    return advice.seam().map(this::seamTable).map(chapter::table).orElse(chapter);
  }

  private Table seamTable(SeamProfile seam) {
    return Columns.of(seam.stages(), units)
        .words("stage", s -> SeamWords.moment(s.stage()))
        .percent("missing %", SeamProfile.AtStage::missingPct)
        .number("contrast", 2, SeamProfile.AtStage::contrast)
        .captioned(
            "Carbon missing at "
                + SeamWords.says(seam.seams())
                + ", wt%, against "
                + Amounts.percent(seam.farPct())
                + " far from it; the line shows from a contrast of 1 on");
  }

  Chapter billet() {
    BilletText text = new BilletText(advice, amounts());
    Chapter chapter = Chapter.of("billet", "The billet after each step");
    int drawn = 0;
    for (Figure f : figures.keySet()) {
      if (f instanceof SectionFigure drawing) {
        int next = drawn + drawing.panels().size();
        chapter = picture(chapter, f.id()).table(text.sizes(drawn, next));
        drawn = next;
      }
    }
    if (drawn == 0) {
      chapter = chapter.table(text.sizes());
    }
    chapter = advice.preform().map(text::preform).map(chapter::words).orElse(chapter);
    return chapter.table(text.carbon());
  }

  Chapter soak() {
    SoakText text = new SoakText(advice, units);
    Chapter chapter = Chapter.of("soak", "Soaks, and what each costs");
    if (text.noneNeeded()) {
      return chapter.words(text.soak());
    }
    chapter = picture(chapter, "soak").table(text.table()).words(text.legend());
    return text.table().rows() == 0 ? chapter.words(SoakText.nowhere()) : chapter;
  }

  Chapter schedule() {
    ScheduleText text = new ScheduleText(advice, units);
    BladeText blade = new BladeText(advice, units);
    Chapter chapter =
        picture(Chapter.of("schedule", "The schedule"), "schedule").table(text.heatsTable());
    if (!advice.schedule().conflicts().isEmpty()) {
      chapter = chapter.head("Conflicts, and what to do").terms(conflicts(advice, units));
    }
    chapter =
        chapter
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
        ? chapter.table(new ProgramText(advice, units).table())
        : chapter;
  }

  private static List<Part.Term> conflicts(Advice advice, UnitSystem units) {
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
    return conflicts(advice, units).stream().map(c -> String.join(" ", c.said())).toList();
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
    String hold =
        s.holdMinutes().map(m -> amounts().time(m) + " once the core is there").orElse("");
    String in = s.in() == Heater.BENCH ? "" : s.in().word();
    String both = in + (in.isEmpty() || hold.isEmpty() ? "" : ", ") + hold;
    return both.isEmpty() ? "" : " (" + both + ")";
  }

  Chapter more() {
    return Chapter.of("narrow", "What else to know").items(new SoakText(advice, units).notes());
  }

  /** Remarks on the steps, and on the schedule where that is told. */
  Chapter remarks(boolean schedule) {
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
    return Chapter.of("remarks", "Remarks").items(all);
  }

  Chapter assumed() {
    return Chapter.of("assumed", "Assumed, since the file does not say")
        .items(new BilletText(advice, amounts()).assumed());
  }

  private Chapter picture(Chapter chapter, String id) {
    return figures.entrySet().stream()
        .filter(f -> f.getKey().id().equals(id))
        .findFirst()
        .map(f -> chapter.with(new Part.Picture(inline(f.getValue()))))
        .orElse(chapter);
  }

  /** The SVG as an element: without the declaration that only a file of its own has. */
  private static String inline(byte[] file) {
    String svg = new String(file, StandardCharsets.UTF_8);
    return svg.substring(svg.indexOf("<svg")).strip();
  }
}
