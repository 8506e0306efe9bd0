package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.state.SeamSet;
import seamsoak.state.StageReport;
import seamsoak.words.SeamWords;

/** The white lines, as they are and as they faded. */
record LinesText(Shown shown) {
  private static final int MOST_COLUMNS = 5;

  static final String NO_SEAMS = "There are no seams, so there is no white line.";

  /** What shows, in words and as a table. */
  String now(List<LineReport> lines, List<CrossingReport> crossings) {
    Page page = new Page();
    List<LineGroup> groups = LineGroup.of(lines);
    if (groups.isEmpty()) {
      return page.say(NO_SEAMS).toString();
    }
    said(groups, crossings).forEach(page::say);
    return page.table(table(groups, crossings)).toString();
  }

  /** Which lines show, a sentence each, and where they cross. */
  List<String> said(List<LineGroup> groups, List<CrossingReport> crossings) {
    List<String> all =
        new ArrayList<>(groups.stream().filter(LineGroup::visible).map(this::said).toList());
    crossings.stream()
        .filter(CrossingReport::visible)
        .max(Comparator.comparingDouble(CrossingReport::contrast))
        .ifPresent(
            c ->
                all.add(
                    "Where seams cross a knot shows brighter than the line"
                        + (all.isEmpty() ? ", though no line does" : "")
                        + ": most where "
                        + name(c)
                        + "."));
    return all.isEmpty() ? List.of("By the middle estimate no line shows.") : all;
  }

  private static String name(CrossingReport c) {
    return SeamWords.cross(c);
  }

  private String said(LineGroup g) {
    return g.name()
        + ": a line "
        + shown.length(g.widestMm().orElse(0.0))
        + " wide shows, with "
        + Shown.percent(g.seamPct())
        + " % carbon at the seam and "
        + Shown.percent(g.farPct())
        + " % far from it.";
  }

  /** The lines as they are. */
  Table table(List<LineGroup> groups, List<CrossingReport> crossings) {
    Table table =
        new Table("seams", "C % there", "far", shown.lengthHeads("width"), "contrast", "shows");
    for (LineGroup g : groups) {
      table.row(
          g.name(),
          Shown.percent(g.seamPct()),
          Shown.percent(g.farPct()),
          shown.lengthCells(g.visible() ? g.widestMm() : Optional.empty()),
          g.contrast().map(k -> Shown.number(k, 2)).orElse(Shown.UNKNOWN),
          g.visible() ? "yes" : g.widestMm().isEmpty() ? "no, lies under the face" : "no");
    }
    crossings.stream()
        .max(Comparator.comparingDouble(CrossingReport::contrast))
        .ifPresent(
            c ->
                table.row(
                    "where " + name(c),
                    Shown.percent(c.seamPct()),
                    Shown.percent(c.farPct()),
                    shown.lengthCells(Optional.empty()),
                    Shown.number(c.contrast(), 2),
                    c.visible() ? "yes" : "no"));
    return table.captioned(
        "The lines now: carbon at the seams and far from them, width on the face of those that"
            + " show, contrast (from 1 on a line shows)");
  }

  /** Contrast of each set of seams after each step. */
  Table faded(List<StageReport> history) {
    List<SeamSet> sets = SeamSet.deepest(history, MOST_COLUMNS);
    Table table = new Table("after step", sets.stream().map(LinesText::head).toList());
    for (StageReport stage : history) {
      if (!stage.lines().isEmpty()) {
        table.row(step(stage), sets.stream().map(s -> cell(s, stage)).toList());
      }
    }
    return table.captioned(
        "How the lines faded: contrast at each step's joints, from 1 on it shows (*)");
  }

  /** Width of the line at each set of seams after each step, on the face. */
  Table widths(List<StageReport> history) {
    List<SeamSet> sets = SeamSet.deepest(history, MOST_COLUMNS);
    List<String> heads = new ArrayList<>();
    sets.forEach(s -> heads.addAll(shown.lengthHeads(head(s))));
    Table table = new Table("after step", heads);
    for (StageReport stage : history) {
      if (!stage.lines().isEmpty()) {
        List<String> cells = new ArrayList<>();
        for (SeamSet set : sets) {
          cells.addAll(shown.lengthCells(set.widthMm(stage.lines())));
        }
        table.row(step(stage), cells);
      }
    }
    return table.captioned("Width of the lines on the face at each step's joints, where they show");
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
        : Shown.number(contrast.getAsDouble(), 2) + (set.shows(stage.lines()) ? "*" : "");
  }
}
