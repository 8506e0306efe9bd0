package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.StepKind;
import seamsoak.state.StageReport;
import seamsoak.state.StageReport.LayerCarbon;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.StageWords;

/** The billet itself: its size and the carbon of its steels after each step. */
record BilletTables(Advice advice, UnitSystem units) {
  /** What tables of skins show. */
  static final String SKIN =
      "Skin with less than 90 % of the core's carbon, on the flats and on the sides; soft is what"
          + " of it would not harden enough for an edge";

  /** Less carbon than this as carbide is not spoken of, wt%. */
  private static final double LEAST_CARBIDE_PCT = 0.005;

  Table sizes() {
    return sizes(advice.history(), units);
  }

  /** Of some of the stages. */
  Table sizes(int from, int to) {
    return sizes(advice.history().subList(from, to), units);
  }

  static Table sizes(List<StageReport> history, UnitSystem units) {
    return Columns.of(history, units)
        .words("after step", StageWords::name)
        .size("long", StageReport::lengthMm)
        .size("wide", StageReport::widthMm)
        .size("thick", StageReport::thicknessMm)
        .captioned("Size after each step");
  }

  /** What the fire has taken from the faces. */
  Table skins() {
    return Columns.of(advice.history(), units)
        .words("after step", StageWords::name)
        .length("skin", StageReport::skinMm)
        .length("sides", StageReport::sideSkinMm)
        .length("soft", StageReport::softMm)
        .length("sides", StageReport::sideSoftMm)
        .captioned(SKIN);
  }

  /** The carbon that each steel has left, mean over its layers. */
  Table carbon() {
    List<StageReport> history = advice.history();
    List<String> steels =
        history.get(history.size() - 1).layers().stream().map(LayerCarbon::steel).toList();
    List<StageReport> known = history.stream().filter(s -> names(s).containsAll(steels)).toList();
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(StageWords.name(known.get(0)), known.get(0).layers()));
    if (known.size() > 1) {
      StageReport last = known.get(known.size() - 1);
      rows.add(new Row(StageWords.name(last), last.layers()));
    }
    List<After> after = advice.schedule().after();
    after.stream()
        .filter(a -> a.step().kind() == StepKind.SOAK || a == after.get(after.size() - 1))
        .forEach(a -> rows.add(new Row(a.step().words(), a.layers())));
    Columns<Row> table = Columns.of(rows, units).words("after", Row::after);
    steels.forEach(s -> table.numberIfKnown(s, 2, r -> mean(r.layers, s)));
    return table.captioned("Carbon of each steel, mean of its layers, wt%" + carbide(rows));
  }

  /** What of it is not in solution, where that is known last. */
  private static String carbide(List<Row> rows) {
    Map<String, String> told = new LinkedHashMap<>();
    for (Row row : rows) {
      for (LayerCarbon l : row.layers()) {
        l.dissolvedPct()
            .filter(d -> l.meanPct() - d > LEAST_CARBIDE_PCT)
            .ifPresent(
                d ->
                    told.put(
                        l.steel(),
                        "; of that in %s %s %% is dissolved after %s, the rest lies as chromium carbide"
                            .formatted(l.steel(), Amounts.percent(d), row.after())));
      }
    }
    return String.join("", told.values());
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
