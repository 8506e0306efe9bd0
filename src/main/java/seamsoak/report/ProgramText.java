package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;
import seamsoak.words.BladeWords;

/** What to set a kiln's controller to, to read and as plain columns for a machine. */
public record ProgramText(Advice advice, UnitSystem units) {
  private static final double PER_KELVIN = 1.8;

  String page() {
    return new Page().table(table()).toString();
  }

  /** A row for each segment, none where no kiln is used. */
  Table table() {
    List<ProgramLine> lines = advice.schedule().program();
    Table table = new Table("step", "no", heads("%s/h"), heads("to %s"), "stay min", "then");
    for (ProgramLine l : lines) {
      table.row(
          l.step().words(),
          Integer.toString(l.number()),
          new Shown(units).pick(rate(l.ratePerHourC() * PER_KELVIN), rate(l.ratePerHourC())),
          new Shown(units).pick(fahrenheit(l), degrees(l.toC())),
          Shown.number(Math.ceil(l.stayMinutes()), 0),
          BladeWords.then(l));
    }
    return table.captioned(
        "For the kiln's controller: degrees per hour, to, stay. It climbs no faster and no hotter"
            + " than the kiln can; each stay has the time in it that the core comes later.");
  }

  /** Comma-separated lines with one header. */
  public String csv() {
    StringBuilder all = new StringBuilder();
    List<String> heads = new ArrayList<>(List.of("step", "segment"));
    heads.addAll(heads("rate_%s_per_h"));
    heads.addAll(heads("to_%s"));
    heads.addAll(List.of("stay_min", "then"));
    all.append(String.join(",", heads)).append('\n');
    for (ProgramLine l : advice.schedule().program()) {
      List<String> cells = new ArrayList<>(List.of(l.step().words(), Integer.toString(l.number())));
      cells.addAll(
          new Shown(units).pick(rate(l.ratePerHourC() * PER_KELVIN), rate(l.ratePerHourC())));
      cells.addAll(new Shown(units).pick(fahrenheit(l), degrees(l.toC())));
      cells.add(Shown.number(Math.ceil(l.stayMinutes()), 0));
      cells.add(BladeWords.then(l).replace(',', ';'));
      all.append(String.join(",", cells)).append('\n');
    }
    return all.toString();
  }

  private List<String> heads(String form) {
    return new Shown(units).pick(form.replace("%s", "F"), form.replace("%s", "C"));
  }

  /** Rounded down, so that no limit of the kiln is passed. */
  private static String rate(double perHour) {
    return Shown.number(perHour < 0 ? Math.ceil(perHour) : Math.floor(perHour), 0);
  }

  /** To 5 F, as everywhere. */
  private static String fahrenheit(ProgramLine line) {
    return degrees(5 * Math.round(Temperature.ofCelsius(line.toC()).fahrenheit() / 5));
  }

  private static String degrees(double at) {
    return Shown.number(at, 0);
  }
}
