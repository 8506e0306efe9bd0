package seamsoak.report;

import java.util.Optional;
import seamsoak.single.Decarburization;
import seamsoak.unit.UnitSystem;

/** What one heat does to a face, in words. */
public record DecarbText(Decarburization skin, UnitSystem units) {
  public String page() {
    Shown shown = new Shown(units);
    Table table = new Table("of its carbon", shown.lengthHeads("reached at"));
    row(table, shown, "50 %", skin.depthMm().to50Pct());
    row(table, shown, "90 %", skin.depthMm().to90Pct());
    row(table, shown, "98 %", skin.depthMm().to98Pct());
    return new Page()
        .say(
            "After "
                + shown.stated(skin.minutes())
                + " at "
                + shown.temperature(skin.temperatureC())
                + " with the face "
                + skin.edge()
                + ", scale has taken "
                + shown.length(skin.metalLossMm())
                + " off "
                + skin.steel()
                + " and the skin below, with less than 90 % of its carbon, is "
                + shown.length(skin.depthMm().to90Pct())
                + " deep.")
        .heading("Depth below the metal that is left")
        .table(table)
        .say(
            "Carbon at the face: "
                + Shown.percent(skin.surfaceCarbonPct())
                + " %, "
                + Shown.percent(skin.startCarbonPct())
                + " % before; "
                + (skin.ferriteRimMm() > 0
                    ? "a rim of ferrite " + shown.length(skin.ferriteRimMm()) + " deep."
                    : "no rim of ferrite."))
        .toString();
  }

  private static void row(Table table, Shown shown, String share, double millimetres) {
    table.row(share, shown.lengthCells(Optional.of(millimetres)));
  }
}
