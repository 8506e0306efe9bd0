package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.SeamSet;
import seamsoak.state.StageReport;
import seamsoak.words.Amounts;
import seamsoak.words.SeamWords;

/** The white lines, as they are and as they faded. */
record LinesText(Amounts amounts) {
  private static final int MOST_COLUMNS = 5;

  /** From here on a line on the face is hardly broader than square to its seam. */
  private static final double STEEP_DEGREES = 60;

  /** Which lines show, a sentence each, and where they cross. */
  List<String> said(SoakAdvice soak) {
    List<LineGroup> groups = LineGroup.of(soak.lines());
    if (groups.isEmpty()) {
      return List.of("There are no seams, so there is no white line.");
    }
    List<String> all =
        new ArrayList<>(groups.stream().filter(LineGroup::visible).map(this::said).toList());
    brightest(soak)
        .filter(CrossingReport::visible)
        .ifPresent(
            c ->
                all.add(
                    "Where seams cross a knot shows brighter than the line"
                        + (all.isEmpty() ? ", though no line does" : "")
                        + ": most where "
                        + SeamWords.cross(c)
                        + "."));
    return all.isEmpty() ? List.of("Likely no line shows.") : all;
  }

  private static Optional<CrossingReport> brightest(SoakAdvice soak) {
    return soak.crossings().stream().max(Comparator.comparingDouble(CrossingReport::contrast));
  }

  private String said(LineGroup g) {
    return "%s: a line %s wide shows%s, with %s %% carbon at the seam and %s %% far from it."
        .formatted(
            g.name(),
            amounts.millimetres(g.widestMm().orElse(0.0)),
            lying(g),
            Amounts.percent(g.seamPct()),
            Amounts.percent(g.farPct()));
  }

  /** A seam that lies flat makes a fine line broad on the face. */
  private static String lying(LineGroup g) {
    return g.degreesToFace()
        .filter(d -> d < STEEP_DEGREES)
        .map(d -> " (its seams lie at " + Math.round(d) + " degrees to the face)")
        .orElse("");
  }

  /** The lines as they are. */
  Table table(SoakAdvice soak) {
    record Row(
        String seams,
        double seamPct,
        double farPct,
        Optional<Double> widthMm,
        Optional<Double> contrast,
        String shows) {}
    List<Row> rows = new ArrayList<>();
    for (LineGroup g : LineGroup.of(soak.lines())) {
      String hidden = g.widestMm().isEmpty() ? "no, lies under the face" : "no";
      rows.add(
          new Row(
              g.name(),
              g.seamPct(),
              g.farPct(),
              g.widestMm().filter(w -> g.visible()),
              g.contrast(),
              g.visible() ? "yes" : hidden));
    }
    brightest(soak)
        .ifPresent(
            c ->
                rows.add(
                    new Row(
                        "where " + SeamWords.cross(c),
                        c.seamPct(),
                        c.farPct(),
                        Optional.empty(),
                        Optional.of(c.contrast()),
                        c.visible() ? "yes" : "no")));
    return Columns.of(rows, amounts.units())
        .words("seams", Row::seams)
        .percent("C % there", Row::seamPct)
        .percent("far", Row::farPct)
        .lengthIfKnown("width", Row::widthMm)
        .numberIfKnown("contrast", 2, Row::contrast)
        .words("shows", Row::shows)
        .captioned(
            "The lines now: carbon at the seams and far from them, width on the face of those that"
                + " show, contrast (from 1 on a line shows)");
  }

  /** Contrast of each set of seams after each step. */
  Table faded(List<StageReport> history) {
    Columns<StageReport> table = bySeams(history);
    deepest(history).forEach(set -> table.words(head(set), stage -> cell(set, stage)));
    return table.captioned(
        "How the lines faded: contrast at each step's joints, from 1 on it shows (*)");
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
    return Columns.of(seamed, amounts.units()).words("after step", LinesText::step);
  }

  private static List<SeamSet> deepest(List<StageReport> history) {
    return SeamSet.deepest(history, MOST_COLUMNS);
  }

  /** The rows of the table say what the step was. */
  private static String head(SeamSet set) {
    return set.made().step() == 0 ? SeamWords.says(set.made()) : "step " + set.made().step();
  }

  static String step(StageReport stage) {
    return stage.step() + " " + stage.kind();
  }

  private static String cell(SeamSet set, StageReport stage) {
    OptionalDouble contrast = set.contrast(stage.lines());
    return contrast.isEmpty()
        ? ""
        : Amounts.number(contrast.getAsDouble(), 2) + (set.shows(stage.lines()) ? "*" : "");
  }
}
