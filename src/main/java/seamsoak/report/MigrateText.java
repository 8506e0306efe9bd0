package seamsoak.report;

import java.util.List;
import java.util.Optional;
import seamsoak.single.Migration;
import seamsoak.unit.UnitSystem;

/** Carbon across a seam in words. */
public record MigrateText(Migration migration, UnitSystem units) {
  private static final double LEAST_PCT = 0.005;

  public Answer answer(List<String> remarks) {
    Numbers shown = new Numbers(units);
    Migration.Layer a = migration.first();
    Migration.Layer b = migration.second();
    boolean toSecond = a.meanCarbonPct() < a.startCarbonPct();
    Migration.Layer giver = toSecond ? a : b;
    Migration.Layer taker = toSecond ? b : a;
    Table table =
        new Table(
            "steel",
            shown.lengthHeads("layer"),
            "start %",
            "mean %",
            "at seam %",
            "middle %",
            "evened out %");
    for (Migration.Layer l : List.of(a, b)) {
      table.row(
          l.steel(),
          shown.lengthCells(Optional.of(l.thicknessMm())),
          Numbers.percent(l.startCarbonPct()),
          Numbers.percent(l.meanCarbonPct()),
          Numbers.percent(l.seamCarbonPct()),
          Numbers.percent(l.midCarbonPct()),
          Numbers.percent(l.evenCarbonPct()));
    }
    String when =
        "After %s at %s "
            .formatted(
                shown.stated(migration.minutes()), shown.temperature(migration.temperatureC()));
    String moved =
        giver.startCarbonPct() - giver.meanCarbonPct() < LEAST_PCT
            ? "hardly any carbon has moved."
            : "%s goes from %s to %s %% carbon and %s from %s to %s %%, each the mean of its layer."
                .formatted(
                    giver.steel(),
                    Numbers.percent(giver.startCarbonPct()),
                    Numbers.percent(giver.meanCarbonPct()),
                    taker.steel(),
                    Numbers.percent(taker.startCarbonPct()),
                    Numbers.percent(taker.meanCarbonPct()));
    return Answer.of(
        List.of(
            Chapter.of("answer")
                .words(when + moved)
                .table(table.captioned("Carbon in a stack of these layers in turn, wt%"))
                .words(even(shown)),
            Chapter.of("remarks", "Remarks").items(remarks)));
  }

  private String even(Numbers shown) {
    return migration
        .minutesToEven90()
        .map(m -> "Nine tenths of the way to even takes " + shown.time(m) + " at that heat.")
        .orElse("The layers are even already, or take more than 1000 h at that heat to get there.");
  }
}
