package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;
import seamsoak.words.BladeWords;

/** What to set a kiln's controller to, to read and as plain columns for a machine. */
public record ProgramText(Advice advice, UnitSystem units) {
  private static final double PER_KELVIN = 1.8;

  /** A row for each segment, none where no kiln is used. */
  Table table() {
    Table table = new Table("step", "no", heads("%s/h"), heads("to %s"), "stay min", "then");
    rows().forEach(table::row);
    return table.captioned(
        "For the kiln's controller: degrees per hour, to, stay. It climbs no faster and no hotter"
            + " than the kiln can; each stay has the time in it that the core comes later.");
  }

  private List<List<String>> rows() {
    Numbers shown = new Numbers(units);
    List<List<String>> rows = new ArrayList<>();
    for (ProgramLine l : advice.schedule().program()) {
      List<String> row = new ArrayList<>(List.of(l.step().words(), Integer.toString(l.number())));
      row.addAll(shown.pick(rate(l.ratePerHourC() * PER_KELVIN), rate(l.ratePerHourC())));
      row.addAll(shown.pick(fahrenheit(l), degrees(l.toC())));
      row.addAll(List.of(Numbers.number(Math.ceil(l.stayMinutes()), 0), BladeWords.then(l)));
      rows.add(row);
    }
    return rows;
  }

  /** Comma-separated lines with one header. */
  public String csv() {
    List<String> heads = new ArrayList<>(List.of("step", "segment"));
    heads.addAll(heads("rate_%s_per_h"));
    heads.addAll(heads("to_%s"));
    heads.addAll(List.of("stay_min", "then"));
    StringBuilder all = new StringBuilder(String.join(",", heads)).append('\n');
    for (List<String> row : rows()) {
      all.append(row.stream().map(cell -> cell.replace(',', ';')).collect(Collectors.joining(",")));
      all.append('\n');
    }
    return all.toString();
  }

  private List<String> heads(String form) {
    return new Numbers(units).pick(form.replace("%s", "F"), form.replace("%s", "C"));
  }

  /** Rounded down, so that no limit of the kiln is passed. */
  private static String rate(double perHour) {
    return Numbers.number(perHour < 0 ? Math.ceil(perHour) : Math.floor(perHour), 0);
  }

  /** To 5 F, as everywhere. */
  private static String fahrenheit(ProgramLine line) {
    return degrees(5 * Math.round(Temperature.ofCelsius(line.toC()).fahrenheit() / 5));
  }

  private static String degrees(double at) {
    return Numbers.number(at, 0);
  }
}
