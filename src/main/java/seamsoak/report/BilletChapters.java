package seamsoak.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.Drawn;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.plan.Advice;
import seamsoak.plan.FaceAdvice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.state.SeamProfile;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.ConflictWords;
import seamsoak.words.DefaultWords;
import seamsoak.words.LineWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.ScheduleWords;
import seamsoak.words.SeamWords;
import seamsoak.words.SoakAnswerWords;
import seamsoak.words.SoakWords;
import seamsoak.words.StageWords;
import seamsoak.words.WorkWords;
import seamsoak.words.face.FaceWords;
import seamsoak.words.fire.SoakedWords;

/**
 * What is said of a billet, a chapter for each subject.
 *
 * @param figures the charts in order, each with its SVG file; each is shown with its subject
 */
record BilletChapters(Advice advice, UnitSystem units, List<Drawn> figures) {
  /** The lines as they are, and how they came to be so. */
  Chapter lines() {
    LineTables text = new LineTables(units);
    Chapter chapter =
        Chapter.of("lines", "The lines and how they fade")
            .words(new LineWords(units).said(advice.soak()));
    if (advice.soak().lines().isEmpty()) {
      return chapter;
    }
    String when = advice.work().isPresent() ? "when all of the file is done" : "now";
    chapter = picture(chapter.table(text.table(advice.soak(), when)), "fading");
    chapter = chapter.table(text.faded(advice.history())).wide(text.widths(advice.history()));
    chapter = picture(chapter, "seam");
    return advice.seam().map(this::seamTable).map(chapter::table).orElse(chapter);
  }

  /** The shown face, as an etch shows it now, after the soak and at the end. */
  Chapter face() {
    Chapter chapter = picture(Chapter.of("face", "The face as the etch shows it"), "face");
    if (advice.faces().isEmpty()) {
      return chapter;
    }
    for (FaceAdvice f : advice.faces()) {
      chapter = chapter.words(FaceWords.title(f) + ": " + new FaceWords(units).shows(f));
    }
    chapter = chapter.words(FaceWords.LEGEND);
    for (FaceAdvice f : advice.faces()) {
      chapter = chapter.wide(new FaceTold(f, units).table());
    }
    return chapter;
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

  /** What was done so far, and the lines as they are there; empty where nothing is said of it. */
  Chapter work() {
    WorkWords words = new WorkWords(units);
    Chapter chapter = Chapter.of("work", "Done so far");
    return advice
        .work()
        .map(
            w ->
                chapter
                    .words(words.now(w))
                    .items(words.done(w))
                    .words(new SoakedWords(units).says(advice).orElse(""))
                    .words("The lines now:")
                    .items(new LineWords(units).said(w.metal())))
        .orElse(chapter);
  }

  Chapter billet() {
    BilletTables text = new BilletTables(advice, units);
    Chapter chapter = Chapter.of("billet", "The billet after each step");
    int drawn = 0;
    for (Drawn d : figures) {
      if (d.figure() instanceof SectionFigure drawing) {
        int next = drawn + drawing.panels().size();
        chapter = picture(chapter, drawing.id()).table(text.sizes(drawn, next));
        drawn = next;
      }
    }
    if (drawn == 0) {
      chapter = chapter.table(text.sizes());
    }
    chapter =
        advice.preform().map(p -> StageWords.preform(p, units)).map(chapter::words).orElse(chapter);
    return chapter.table(text.skins()).table(text.carbon());
  }

  Chapter soak() {
    SoakTable soaks = new SoakTable(advice.soak(), units);
    Chapter chapter = Chapter.of("soak", "Soaks, and what each costs");
    if (soaks.noneNeeded()) {
      return chapter.words(new SoakAnswerWords(advice.soak(), units).says());
    }
    chapter = picture(chapter, "soak").table(soaks.table()).words(soaks.legend());
    return soaks.table().rows() == 0 ? chapter.words(SoakAnswerWords.NOWHERE) : chapter;
  }

  Chapter schedule() {
    ScheduleTables text = new ScheduleTables(advice.schedule(), units);
    BladeText blade = new BladeText(advice, units);
    Chapter chapter =
        picture(Chapter.of("schedule", "The schedule"), "schedule").table(text.heatsTable());
    if (!advice.schedule().conflicts().isEmpty()) {
      chapter = chapter.head("Conflicts, and what to do").terms(conflicts());
    }
    chapter =
        chapter
            .head("Step by step")
            .terms(steps())
            .table(blade.bladeTable())
            .table(blade.mediaTable())
            .table(blade.quenchTable())
            .table(text.afterTable())
            .table(text.skinTable())
            .table(blade.structuresTable())
            .table(text.criticalTable())
            .table(text.magnetTable());
    return advice.hardStops().isEmpty()
        ? chapter.table(new ProgramText(advice, units).table())
        : chapter;
  }

  private List<Part.Term> conflicts() {
    return advice.schedule().conflicts().stream()
        .map(new ConflictWords(units)::said)
        .map(c -> new Part.Term(c.about(), c.inFull()))
        .toList();
  }

  /** The steps one by one: what to do, why, what to look for. */
  private List<Part.Term> steps() {
    ScheduleWords words = new ScheduleWords(advice.schedule(), units);
    List<Part.Term> all = new ArrayList<>();
    for (ScheduleAdvice.Step s : advice.schedule().steps()) {
      all.add(new Part.Term(all.size() + 1 + ". " + words.title(s), words.step(s)));
    }
    return all;
  }

  Chapter more() {
    return Chapter.of("narrow", "What else to know")
        .items(advice.soak().advice().stream().map(new SoakWords(units)::note).toList());
  }

  /** Heats of the billet's own that burn it, or are too cold for what they are for. */
  Chapter heats() {
    return Chapter.of("heats", "Heats of the file that may spoil it")
        .items(StageWords.heats(advice.history(), true, units));
  }

  /** Remarks on the steps, and on the schedule where that is told. */
  Chapter remarks(boolean schedule) {
    List<String> all = new ArrayList<>(StageWords.remarks(advice.history()));
    all.addAll(StageWords.heats(advice.history(), false, units));
    if (schedule) {
      advice.schedule().remarks().stream()
          .map(new ScheduleRemarkWords(units)::says)
          .forEach(all::add);
    }
    return Chapter.of("remarks", "Remarks").items(all);
  }

  Chapter assumed() {
    return Chapter.of("assumed", "Assumed, since the file does not say")
        .items(new DefaultWords(units).together(advice.defaults()));
  }

  private Chapter picture(Chapter chapter, String id) {
    return figures.stream()
        .filter(f -> f.figure().id().equals(id))
        .findFirst()
        .map(f -> chapter.with(new Part.Picture(inline(f.svg()))))
        .orElse(chapter);
  }

  /** The SVG as an element: without the declaration that only a file of its own has. */
  private static String inline(byte[] file) {
    String svg = new String(file, StandardCharsets.UTF_8);
    return svg.substring(svg.indexOf("<svg")).strip();
  }
}
