package seamsoak.report;

import java.util.List;
import java.util.Optional;
import seamsoak.single.Migration;
import seamsoak.unit.UnitSystem;

/** Carbon across a seam in words. */
public record MigrateText(Migration migration, UnitSystem units) {
  private static final double LEAST_PCT = 0.005;

  public String page() {
    Shown shown = new Shown(units);
    Migration.Layer a = migration.first();
    Migration.Layer b = migration.second();
    boolean toSecond = a.meanCarbonPct() < a.startCarbonPct();
    Migration.Layer giver = toSecond ? a : b;
    Migration.Layer taker = toSecond ? b : a;
    String when =
        "After "
            + shown.stated(migration.minutes())
            + " at "
            + shown.temperature(migration.temperatureC());
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
          Shown.percent(l.startCarbonPct()),
          Shown.percent(l.meanCarbonPct()),
          Shown.percent(l.seamCarbonPct()),
          Shown.percent(l.midCarbonPct()),
          Shown.percent(l.evenCarbonPct()));
    }
    String moved =
        giver.startCarbonPct() - giver.meanCarbonPct() < LEAST_PCT
            ? when + " hardly any carbon has moved."
            : when
                + " "
                + giver.steel()
                + " goes from "
                + Shown.percent(giver.startCarbonPct())
                + " to "
                + Shown.percent(giver.meanCarbonPct())
                + " % carbon and "
                + taker.steel()
                + " from "
                + Shown.percent(taker.startCarbonPct())
                + " to "
                + Shown.percent(taker.meanCarbonPct())
                + " %, each the mean of its layer.";
    return new Page()
        .say(moved)
        .heading("Carbon in a stack of these layers in turn, wt%")
        .table(table)
        .say(even(shown))
        .toString();
  }

  private String even(Shown shown) {
    return migration
        .minutesToEven90()
        .map(m -> "Nine tenths of the way to even takes " + shown.time(m) + " at that heat.")
        .orElse("The layers are even already, or take more than 1000 h at that heat to get there.");
  }
}
