package seamsoak.report;

import java.util.List;
import java.util.Map;
import seamsoak.single.Decarburization;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;

/** What one heat does to a face, in words. */
public record DecarbText(Decarburization skin, UnitSystem units) {
  public Answer answer(List<String> remarks) {
    Amounts amounts = new Amounts(units);
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
                .words(
                    ("After %s at %s with the face %s, scale has taken %s off %s and the skin below, with"
                            + " less than 90 %% of its carbon, is %s deep.")
                        .formatted(
                            amounts.stated(skin.minutes()),
                            amounts.heat(skin.temperatureC()),
                            skin.edge(),
                            amounts.millimetres(skin.metalLossMm()),
                            skin.steel(),
                            amounts.millimetres(skin.depthMm().to90Pct())))
                .table(table)
                .words(
                    "Carbon at the face: %s %%, %s %% before; %s."
                        .formatted(
                            Amounts.percent(skin.surfaceCarbonPct()),
                            Amounts.percent(skin.startCarbonPct()),
                            skin.ferriteRimMm() > 0
                                ? "a rim of ferrite "
                                    + amounts.millimetres(skin.ferriteRimMm())
                                    + " deep"
                                : "no rim of ferrite")),
            Chapter.of("remarks", "Remarks").items(remarks)));
  }
}
