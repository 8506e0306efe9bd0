package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import seamsoak.advice.LineReport;
import seamsoak.advice.SeamSet;
import seamsoak.advice.StageReport;

/** The white lines, as they are and as they faded. */
record LinesText(Shown shown) {
  private static final int MOST_COLUMNS = 5;

  /** What shows, in words and as a table. */
  String now(List<LineReport> lines) {
    Page page = new Page();
    List<LineGroup> groups = LineGroup.of(lines);
    if (groups.isEmpty()) {
      return page.say("No seams between like steels, so there is no white line.").toString();
    }
    said(groups).forEach(page::say);
    return page.table(table(groups)).toString();
  }

  /** Which lines show, a sentence each. */
  List<String> said(List<LineGroup> groups) {
    List<LineGroup> visible = groups.stream().filter(LineGroup::visible).toList();
    return visible.isEmpty()
        ? List.of("By the middle estimate no line shows.")
        : visible.stream().map(this::said).toList();
  }

  private String said(LineGroup g) {
    return g.name()
        + ": a line "
        + shown.length(g.widestMm().orElse(0.0))
        + " wide shows, with "
        + Shown.percent(g.deepestPct())
        + " % carbon missing at the seam.";
  }

  /** The lines as they are. */
  Table table(List<LineGroup> groups) {
    Table table = new Table("seams", "carbon short %", shown.lengthHeads("width"), "shows");
    for (LineGroup g : groups) {
      table.row(
          g.name(),
          Shown.percent(g.deepestPct()),
          shown.lengthCells(g.widestMm()),
          g.visible() ? "yes" : g.widestMm().isEmpty() ? "no, lies under the face" : "no");
    }
    return table.captioned("The lines now: carbon missing at the seams, width on the face");
  }

  /** Carbon missing at each set of seams after each step. */
  Table faded(List<StageReport> history) {
    List<SeamSet> sets = SeamSet.deepest(history, MOST_COLUMNS);
    Table table = new Table("after step", sets.stream().map(s -> s.name()).toList());
    for (StageReport stage : history) {
      if (!stage.lines().isEmpty()) {
        table.row(step(stage), sets.stream().map(s -> cell(s, stage)).toList());
      }
    }
    return table.captioned(
        "How the lines faded: % of carbon missing at the seams, * where it shows");
  }

  /** Width of the line at each set of seams after each step, on the face. */
  Table widths(List<StageReport> history) {
    List<SeamSet> sets = SeamSet.deepest(history, MOST_COLUMNS);
    List<String> heads = new ArrayList<>();
    sets.forEach(s -> heads.addAll(shown.lengthHeads(s.name())));
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
    return table.captioned("Width of the lines on the face; - where the seams lie under it");
  }

  static String step(StageReport stage) {
    return stage.step() + " " + stage.kind();
  }

  private static String cell(SeamSet set, StageReport stage) {
    OptionalDouble dip = set.dipPct(stage.lines());
    return dip.isEmpty()
        ? ""
        : Shown.percent(dip.getAsDouble()) + (set.shows(stage.lines()) ? "*" : "");
  }
}
