package seamsoak.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import seamsoak.chart.Figure;
import seamsoak.chart.SectionFigure;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.Advice;
import seamsoak.state.SeamProfile;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ConflictWords;
import seamsoak.words.SeamWords;

/**
 * What follows the shop card in a report.
 *
 * @param figures the charts in order, each with its SVG file
 * @param pairs each two steels of the stack that lie on each other
 */
record ReportSections(
    Advice advice,
    UnitSystem units,
    Map<Figure, byte[]> figures,
    List<PairAdvice> pairs,
    Trace trace,
    Colophon colophon) {

  List<Section> all() {
    List<Section> all = new ArrayList<>();
    all.add(cautions());
    all.add(lines());
    all.add(billet());
    all.add(soak());
    all.add(pairing());
    all.add(schedule());
    all.add(
        Section.of("narrow", "What would narrow the band")
            .items(new SoakText(advice, units).notes()));
    all.add(
        Section.of("assumed", "Assumed, since the file does not say")
            .items(new BilletText(advice, shown()).assumed()));
    all.add(sources());
    return all.stream().filter(s -> !s.parts().isEmpty()).toList();
  }

  private Shown shown() {
    return new Shown(units);
  }

  /** Every caution once, with the steps at which it arises; what always holds first. */
  private Section cautions() {
    Section section = Section.of("cautions", "Cautions");
    if (!advice.cautions().isEmpty()) {
      section = section.head("Always").items(advice.cautions());
    }
    for (Map.Entry<Set<String>, List<String>> e :
        new CautionText(advice, units).groups().entrySet()) {
      section = section.head("For " + String.join(", ", e.getKey())).items(e.getValue());
    }
    List<String> remarks = new CautionText(advice, units).remarks();
    return remarks.isEmpty() ? section : section.head("Remarks").items(remarks);
  }

  private Section lines() {
    LinesText text = new LinesText(shown());
    List<LineGroup> groups = LineGroup.of(advice.soak().lines());
    Section section = Section.of("lines", "The lines and how they fade");
    if (groups.isEmpty()) {
      return section.words(LinesText.NO_SEAMS);
    }
    section =
        text.said(groups, advice.soak().crossings()).stream()
            .reduce(section, Section::words, (a, b) -> b);
    section = picture(section.table(text.table(groups, advice.soak().crossings())), "fading");
    section = section.table(text.faded(advice.history())).table(text.widths(advice.history()));
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

  private Section billet() {
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

  private Section soak() {
    SoakText text = new SoakText(advice, units);
    Section section = Section.of("soak", "Soaks, and what each costs");
    if (text.noneNeeded()) {
      return section.words(text.soak());
    }
    section = picture(section, "soak").table(text.table()).words(text.legend());
    return text.table().body().isEmpty() ? section.words(SoakText.nowhere()) : section;
  }

  private Section pairing() {
    Section section = Section.of("pairing", "The pairing");
    for (PairAdvice pair : pairs) {
      PairText text = new PairText(pair, units);
      section = section.head(text.answer()).items(text.remedies()).table(text.table());
    }
    return section;
  }

  private Section schedule() {
    ScheduleText text = new ScheduleText(advice, units);
    BladeText blade = new BladeText(advice, units);
    Section section =
        picture(Section.of("schedule", "The schedule"), "schedule").table(text.heatsTable());
    if (!advice.schedule().conflicts().isEmpty()) {
      section = section.head("Conflicts, and what to do").terms(conflicts());
    }
    return section
        .head("Step by step")
        .terms(new StepsText(advice, shown()).terms())
        .table(blade.bladeTable())
        .table(blade.mediaTable())
        .table(blade.quenchTable())
        .table(text.afterTable())
        .table(blade.structuresTable())
        .table(text.criticalTable())
        .table(text.magnetTable())
        .table(new ProgramText(advice, units).table());
  }

  private List<Part.Term> conflicts() {
    List<Part.Term> all =
        advice.schedule().conflicts().stream()
            .map(new ConflictWords(units)::said)
            .map(
                c ->
                    new Part.Term(
                        c.about(),
                        List.of(SoakText.capital(sentence(c.says())), "Do: " + sentence(c.todo()))))
            .toList();
    return all.isEmpty()
        ? List.of(new Part.Term("none", List.of("The steels want nothing that the others forbid.")))
        : all;
  }

  private static String sentence(String words) {
    return words.endsWith(".") ? words : words + ".";
  }

  private Section sources() {
    Section section =
        Section.of("method", "Method and sources")
            .terms(
                List.of(
                    new Part.Term("program", List.of(colophon.program())),
                    new Part.Term("tables", List.of(colophon.data())),
                    new Part.Term("command", List.of(colophon.command()))))
            .words(
                "Carbon is followed through the whole history by one calculation: from its activity"
                    + " in each steel, across seams, layers and faces, heat by heat. The band holds"
                    + " eight of ten possible histories. Temperatures below are in C, contents in"
                    + " wt%.");
    List<String> left = SourcesText.exceeded(trace);
    section =
        left.isEmpty()
            ? section.words("No formula was used outside its range.")
            : section.head("Ranges exceeded").items(left);
    return trace.entries().isEmpty()
        ? section
        : section
            .head("What each number rests on")
            .terms(trace.entries().stream().map(SourcesText::term).toList());
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
