package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.LineGroup;
import seamsoak.state.SeamSet;
import seamsoak.state.Shows;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.LineWords;
import seamsoak.words.SeamWords;
import seamsoak.words.StageWords;

/** The white lines as they are and as they faded, row by row. */
record LineTables(UnitSystem units) {
  private static final int MOST_COLUMNS = 5;

  /** The lines as they are. */
  Table table(SoakAdvice soak, String when) {
    record Row(
        String seams,
        double seamPct,
        double farPct,
        Optional<Double> widthMm,
        Optional<Shows> shows) {}
    List<Row> rows = new ArrayList<>();
    for (LineGroup g : LineGroup.of(soak.lines())) {
      rows.add(
          new Row(
              LineWords.name(g),
              g.seamPct(),
              g.farPct(),
              g.widestMm().filter(w -> may(g)),
              g.shows()));
    }
    soak.brightest()
        .ifPresent(
            c ->
                rows.add(
                    new Row(
                        "where " + SeamWords.cross(c),
                        c.seamPct(),
                        c.farPct(),
                        Optional.empty(),
                        c.shows())));
    return Columns.of(rows, units)
        .words("seams", Row::seams)
        .percent("C % there", Row::seamPct)
        .percent("far", Row::farPct)
        .lengthIfKnown("width", Row::widthMm)
        .words("now", r -> LineWords.cell(r.shows().map(Shows::asCooled)))
        .words("annealed", r -> LineWords.cell(r.shows().map(Shows::annealed)))
        .words("blade", r -> LineWords.cell(r.shows().map(Shows::hardened)))
        .captioned(
            "The lines "
                + when
                + ": carbon at the seams and far from them, width on the face of those that may show, contrast etched as"
                + " it has cooled, annealed, and as a finished blade without a soak (from 1 on a"
                + " line shows in the likely case; yes and no in nine of ten)");
  }

  /** Whether it may show in the blade or now: how wide a line is that never shows says nothing. */
  private static boolean may(LineGroup g) {
    return g.shows().filter(Shows::matters).isPresent();
  }

  /** Contrast of each set of seams after each step. */
  Table faded(List<StageReport> history) {
    Columns<StageReport> table = bySeams(history);
    deepest(history).forEach(set -> table.words(head(set), stage -> cell(set, stage)));
    return table.captioned(
        "How the lines faded: contrast at each step's joints, etched as it cools, from 1 on it shows"
            + " (*)");
  }

  /** Width of the line at each set of seams after each step, on the face. */
  Table widths(List<StageReport> history) {
    Columns<StageReport> table = bySeams(history);
    deepest(history)
        .forEach(set -> table.lengthIfKnown(head(set), stage -> set.widthMm(stage.lines())));
    return table.captioned("Width of the lines on the face at each step's joints, where they show");
  }

  private Columns<StageReport> bySeams(List<StageReport> history) {
    List<StageReport> seamed = history.stream().filter(s -> !s.lines().isEmpty()).toList();
    return Columns.of(seamed, units).words("after step", StageWords::name);
  }

  private static List<SeamSet> deepest(List<StageReport> history) {
    return SeamSet.deepest(history, MOST_COLUMNS);
  }

  /** The rows of the table say what the step was. */
  private static String head(SeamSet set) {
    return set.made().step() == 0 ? SeamWords.says(set.made()) : "step " + set.made().step();
  }

  private static String cell(SeamSet set, StageReport stage) {
    OptionalDouble contrast = set.contrast(stage.lines());
    return contrast.isEmpty()
        ? ""
        : Amounts.number(contrast.getAsDouble(), 2) + (set.shows(stage.lines()) ? "*" : "");
  }
}
