package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import seamsoak.advice.LineReport;
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
    List<Integer> sets = deepestSets(history);
    Table table = new Table("after step", sets.stream().map(s -> name(s, history)).toList());
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
    List<Integer> sets = deepestSets(history);
    List<String> heads = new ArrayList<>();
    sets.forEach(s -> heads.addAll(shown.lengthHeads(name(s, history))));
    Table table = new Table("after step", heads);
    for (StageReport stage : history) {
      if (!stage.lines().isEmpty()) {
        List<String> cells = new ArrayList<>();
        for (int set : sets) {
          cells.addAll(shown.lengthCells(widest(set, stage.lines())));
        }
        table.row(step(stage), cells);
      }
    }
    return table.captioned("Width of the lines on the face; - where the seams lie under it");
  }

  private static Optional<Double> widest(int set, List<LineReport> lines) {
    return lines.stream()
        .filter(l -> l.step() == set)
        .flatMap(l -> l.widthMm().stream())
        .max(Double::compare);
  }

  static String step(StageReport stage) {
    return stage.step() + " " + stage.kind();
  }

  /** The sets of seams by the step that made them; when there are many, those deepest at last. */
  private static List<Integer> deepestSets(List<StageReport> history) {
    List<LineReport> last = history.get(history.size() - 1).lines();
    Set<Integer> sets = new TreeSet<>();
    history.forEach(s -> s.lines().forEach(l -> sets.add(l.step())));
    return sets.stream()
        .sorted(Comparator.comparingDouble((Integer s) -> -deepest(s, last).orElse(0.0)))
        .limit(MOST_COLUMNS)
        .sorted()
        .toList();
  }

  private static String name(int set, List<StageReport> history) {
    return set == 0
        ? "layers"
        : history.stream()
            .filter(s -> s.step() == set)
            .map(s -> s.kind() + " " + set)
            .findFirst()
            .orElseThrow();
  }

  private static Optional<Double> deepest(int set, List<LineReport> lines) {
    return lines.stream().filter(l -> l.step() == set).map(LineReport::dipPct).max(Double::compare);
  }

  private static String cell(int set, StageReport stage) {
    boolean shows = stage.lines().stream().anyMatch(l -> l.step() == set && l.visible());
    return deepest(set, stage.lines()).map(d -> Shown.percent(d) + (shows ? "*" : "")).orElse("");
  }
}
