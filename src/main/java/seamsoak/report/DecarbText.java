package seamsoak.report;

import java.util.List;
import java.util.Optional;
import seamsoak.single.Decarburization;
import seamsoak.unit.UnitSystem;

/** What one heat does to a face, in words. */
public record DecarbText(Decarburization skin, UnitSystem units) {
  public Answer answer(List<String> remarks) {
    Numbers shown = new Numbers(units);
    Table table = new Table("of its carbon", shown.lengthHeads("reached at"));
    row(table, shown, "50 %", skin.depthMm().to50Pct());
    row(table, shown, "90 %", skin.depthMm().to90Pct());
    row(table, shown, "98 %", skin.depthMm().to98Pct());
    return Answer.of(
        List.of(
            Chapter.of("answer")
                .words(
                    ("After %s at %s with the face %s, scale has taken %s off %s and the skin below, with"
                            + " less than 90 %% of its carbon, is %s deep.")
                        .formatted(
                            shown.stated(skin.minutes()),
                            shown.temperature(skin.temperatureC()),
                            skin.edge(),
                            shown.length(skin.metalLossMm()),
                            skin.steel(),
                            shown.length(skin.depthMm().to90Pct())))
                .table(table.captioned("Depth below the metal that is left"))
                .words(
                    "Carbon at the face: %s %%, %s %% before; %s."
                        .formatted(
                            Numbers.percent(skin.surfaceCarbonPct()),
                            Numbers.percent(skin.startCarbonPct()),
                            skin.ferriteRimMm() > 0
                                ? "a rim of ferrite " + shown.length(skin.ferriteRimMm()) + " deep"
                                : "no rim of ferrite")),
            Chapter.of("remarks", "Remarks").items(remarks)));
  }

  private static void row(Table table, Numbers shown, String share, double millimetres) {
    table.row(share, shown.lengthCells(Optional.of(millimetres)));
  }
}
