package seamsoak.report;

import java.util.List;
import seamsoak.single.Migration;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;

/** Carbon across a seam in words. */
public record MigrateText(Migration migration, UnitSystem units) {
  private static final double LEAST_PCT = 0.005;

  public Answer answer(List<String> remarks) {
    Amounts amounts = new Amounts(units);
    Migration.Layer a = migration.first();
    Migration.Layer b = migration.second();
    boolean toSecond = a.meanCarbonPct() < a.startCarbonPct();
    Migration.Layer giver = toSecond ? a : b;
    Migration.Layer taker = toSecond ? b : a;
    Table table =
        Columns.of(List.of(a, b), units)
            .words("steel", Migration.Layer::steel)
            .length("layer", Migration.Layer::thicknessMm)
            .percent("start %", Migration.Layer::startCarbonPct)
            .percent("mean %", Migration.Layer::meanCarbonPct)
            .percent("at seam %", Migration.Layer::seamCarbonPct)
            .percent("middle %", Migration.Layer::midCarbonPct)
            .percent("evened out %", Migration.Layer::evenCarbonPct)
            .captioned("Carbon in a stack of these layers in turn, wt%");
    String when =
        "After %s at %s "
            .formatted(amounts.stated(migration.minutes()), amounts.heat(migration.temperatureC()));
    String moved =
        giver.startCarbonPct() - giver.meanCarbonPct() < LEAST_PCT
            ? "hardly any carbon has moved."
            : "%s goes from %s to %s %% carbon and %s from %s to %s %%, each the mean of its layer."
                .formatted(
                    giver.steel(),
                    Amounts.percent(giver.startCarbonPct()),
                    Amounts.percent(giver.meanCarbonPct()),
                    taker.steel(),
                    Amounts.percent(taker.startCarbonPct()),
                    Amounts.percent(taker.meanCarbonPct()));
    return Answer.of(
        List.of(
            Chapter.of("answer").words(when + moved).table(table).words(even(amounts)),
            Chapter.of("remarks", "Remarks").items(remarks)));
  }

  private String even(Amounts amounts) {
    return migration
        .minutesToEven90()
        .map(m -> "Nine tenths of the way to even takes " + amounts.time(m) + " at that heat.")
        .orElse("The layers are even already, or take more than 1000 h at that heat to get there.");
  }
}
