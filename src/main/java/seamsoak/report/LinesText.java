package seamsoak.report;

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
    List<LineGroup> visible = groups.stream().filter(LineGroup::visible).toList();
    if (visible.isEmpty()) {
      page.say("By the middle estimate no line shows.");
    }
    for (LineGroup g : visible) {
      page.say(
          g.name()
              + ": a line "
              + shown.length(g.widestMm().orElse(0.0))
              + " wide shows, with "
              + Shown.percent(g.deepestPct())
              + " % carbon missing at the seam.");
    }
    Table table = new Table("seams", "carbon short %", shown.lengthHeads("width"), "shows");
    for (LineGroup g : groups) {
      table.row(
          g.name(),
          Shown.percent(g.deepestPct()),
          shown.lengthCells(g.widestMm()),
          g.visible() ? "yes" : g.widestMm().isEmpty() ? "no, lies under the face" : "no");
    }
    return page.table(table).toString();
  }

  /** Carbon missing at each set of seams after each step. */
  String faded(List<StageReport> history) {
    List<Integer> sets = deepestSets(history);
    if (sets.isEmpty()) {
      return "";
    }
    Table table = new Table("after step", sets.stream().map(s -> name(s, history)).toList());
    for (StageReport stage : history) {
      if (!stage.lines().isEmpty()) {
        table.row(step(stage), sets.stream().map(s -> cell(s, stage)).toList());
      }
    }
    return new Page()
        .say("How the lines faded: % of carbon missing at the seams, * where it shows")
        .table(table)
        .toString();
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
