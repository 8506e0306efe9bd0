package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Default;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.StepKind;
import seamsoak.state.Preform;
import seamsoak.state.StageReport;
import seamsoak.state.StageReport.LayerCarbon;
import seamsoak.words.Amounts;
import seamsoak.words.DefaultWords;

/** The billet itself: its size after each step, the bar that tiles would have wanted, defaults. */
record BilletText(Advice advice, Amounts amounts) {

  Table sizes() {
    return sizes(0, advice.history().size());
  }

  /** Of some of the stages. */
  Table sizes(int from, int to) {
    return Columns.of(advice.history().subList(from, to), amounts.units())
        .words("after step", LinesText::step)
        .size("long", StageReport::lengthMm)
        .size("wide", StageReport::widthMm)
        .size("thick", StageReport::thicknessMm)
        .length("skin", StageReport::skinMm)
        .captioned("Size after each step, and the skin with less than 90 % of the core's carbon");
  }

  String preform(Preform p) {
    return ("The tiles' cells are %s times as long as they are wide by now. To end up square, forge"
            + " the bar %s thick by %s wide before cutting; %d tiles take %s of it.")
        .formatted(
            Amounts.percent(p.aspectNow()),
            amounts.millimetres(p.thicknessMm()),
            amounts.millimetres(p.widthMm()),
            p.tiles(),
            amounts.millimetres(p.barLengthMm()));
  }

  /** What was assumed, the steps that share an assumption named together. */
  List<String> assumed() {
    DefaultWords words = new DefaultWords(amounts.units());
    Map<Default.What, List<String>> byWhat = new LinkedHashMap<>();
    for (Default taken : advice.defaults()) {
      byWhat.computeIfAbsent(taken.what(), k -> new ArrayList<>()).add(words.where(taken));
    }
    List<String> items = new ArrayList<>();
    byWhat.forEach(
        (what, where) ->
            items.add(String.join(", ", where).replace(", step ", ", ") + ": " + words.what(what)));
    return items;
  }

  /** The carbon that each steel has left, mean over its layers. */
  Table carbon() {
    List<StageReport> history = advice.history();
    List<String> steels =
        history.get(history.size() - 1).layers().stream().map(LayerCarbon::steel).toList();
    List<StageReport> known = history.stream().filter(s -> names(s).containsAll(steels)).toList();
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(LinesText.step(known.get(0)), known.get(0).layers()));
    if (known.size() > 1) {
      StageReport last = known.get(known.size() - 1);
      rows.add(new Row(LinesText.step(last), last.layers()));
    }
    List<After> after = advice.schedule().after();
    after.stream()
        .filter(a -> a.step().kind() == StepKind.SOAK || a == after.get(after.size() - 1))
        .forEach(a -> rows.add(new Row(a.step().words(), a.layers())));
    Columns<Row> table = Columns.of(rows, amounts.units()).words("after", Row::after);
    steels.forEach(s -> table.numberIfKnown(s, 2, r -> mean(r.layers, s)));
    return table.captioned("Carbon of each steel, mean of its layers, wt%");
  }

  /** What is left in the layers by then. */
  private record Row(String after, List<LayerCarbon> layers) {}

  private static List<String> names(StageReport stage) {
    return stage.layers().stream().map(LayerCarbon::steel).toList();
  }

  /** The mean of one steel's layers. */
  static Optional<Double> mean(List<LayerCarbon> layers, String steel) {
    return layers.stream()
        .filter(l -> l.steel().equals(steel))
        .map(LayerCarbon::meanPct)
        .findFirst();
  }
}
