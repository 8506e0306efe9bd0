package seamsoak.report;

import java.util.List;
import java.util.Map;
import seamsoak.single.Decarburization;
import seamsoak.single.HeatRemark;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SingleWords;

/** What one heat does to a face. */
public record DecarbText(Decarburization skin, UnitSystem units) {
  public Answer answer(List<HeatRemark> remarks) {
    SingleWords words = new SingleWords(units);
    Table table =
        Columns.of(
                List.of(
                    Map.entry("50 %", skin.depthMm().to50Pct()),
                    Map.entry("90 %", skin.depthMm().to90Pct()),
                    Map.entry("98 %", skin.depthMm().to98Pct())),
                units)
            .words("of its carbon", Map.Entry::getKey)
            .length("reached at", Map.Entry::getValue)
            .captioned("Depth below the metal that is left");
    return Answer.of(
        List.of(
            Chapter.of("answer")
                .words(words.taken(skin))
                .table(table)
                .words(words.face(skin))
                .words(words.band(skin)),
            Chapter.of("remarks", "Remarks").items(remarks.stream().map(words::remark).toList())));
  }
}
