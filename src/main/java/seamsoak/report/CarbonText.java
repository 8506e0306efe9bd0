package seamsoak.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.StepKind;
import seamsoak.state.StageReport;
import seamsoak.state.StageReport.LayerCarbon;

/** The carbon that each steel has left, mean over its layers. */
record CarbonText(Advice advice) {
  Table table() {
    List<StageReport> history = advice.history();
    List<String> steels =
        history.get(history.size() - 1).layers().stream().map(LayerCarbon::steel).toList();
    List<StageReport> known = history.stream().filter(s -> names(s).containsAll(steels)).toList();
    Table table = new Table("after", steels);
    row(table, LinesText.step(known.get(0)), known.get(0).layers(), steels);
    if (known.size() > 1) {
      StageReport last = known.get(known.size() - 1);
      row(table, LinesText.step(last), last.layers(), steels);
    }
    List<After> after = advice.schedule().after();
    after.stream()
        .filter(a -> a.step().kind() == StepKind.SOAK || a == after.get(after.size() - 1))
        .forEach(a -> row(table, a.step().words(), a.layers(), steels));
    return table.captioned("Carbon of each steel, mean of its layers, wt%");
  }

  private static List<String> names(StageReport stage) {
    return stage.layers().stream().map(LayerCarbon::steel).toList();
  }

  private static void row(Table table, String name, List<LayerCarbon> layers, List<String> steels) {
    Map<String, Double> of =
        layers.stream().collect(Collectors.toMap(LayerCarbon::steel, LayerCarbon::meanPct));
    table.row(
        name,
        steels.stream()
            .map(s -> of.containsKey(s) ? Numbers.percent(of.get(s)) : Numbers.UNKNOWN)
            .toList());
  }
}
