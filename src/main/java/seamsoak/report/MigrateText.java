package seamsoak.report;

import java.util.List;
import seamsoak.single.HeatRemark;
import seamsoak.single.Migration;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SingleWords;

/** Carbon across a seam. */
public record MigrateText(Migration migration, UnitSystem units) {
  public Answer answer(List<HeatRemark> remarks) {
    SingleWords words = new SingleWords(units);
    List<String> dissolved = words.dissolved(migration);
    Table table =
        Columns.of(List.of(migration.first(), migration.second()), units)
            .words("steel", Migration.Layer::steel)
            .length("layer", Migration.Layer::thicknessMm)
            .percent("start %", Migration.Layer::startCarbonPct)
            .percent("mean %", Migration.Layer::meanCarbonPct)
            .percent("at seam %", Migration.Layer::seamCarbonPct)
            .percent("middle %", Migration.Layer::midCarbonPct)
            .percent("evened out %", Migration.Layer::evenCarbonPct)
            .captioned(
                "Carbon in a stack of these layers in turn, wt%"
                    + (dissolved.isEmpty() ? "" : ", dissolved and carbide"));
    return Answer.of(
        List.of(
            Chapter.of("answer")
                .words(words.moved(migration))
                .table(table)
                .items(dissolved)
                .words(words.even(migration)),
            Chapter.of("remarks", "Remarks").items(remarks.stream().map(words::remark).toList())));
  }
}
