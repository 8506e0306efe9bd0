package seamsoak.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.BladeWords;

/** What to set a kiln's controller to, to read and as plain columns for a machine. */
public record ProgramText(Advice advice, UnitSystem units) {
  private static final double PER_KELVIN = 1.8;

  /** A row for each segment, none where no kiln is used. */
  Table table() {
    return Columns.of(advice.schedule().program(), units)
        .words("step", l -> l.step().words())
        .words("segment", l -> Integer.toString(l.number()))
        .both(
            "", "F/h", "C/h", l -> rate(l.ratePerHourC() * PER_KELVIN), l -> rate(l.ratePerHourC()))
        .both("to", "F", "C", ProgramText::fahrenheit, l -> Amounts.number(l.toC(), 0))
        .words("stay min", l -> Amounts.number(Math.ceil(l.stayMinutes()), 0))
        .words("then", BladeWords::then)
        .captioned(
            "For the kiln's controller: degrees per hour, to, stay. It climbs no faster and no hotter"
                + " than the kiln can; each stay has the time in it that the core comes later.");
  }

  /** Comma-separated lines with one header. */
  public String csv() {
    String heads =
        switch (units) {
          case US -> "rate_F_per_h,to_F";
          case METRIC -> "rate_C_per_h,to_C";
          case BOTH -> "rate_F_per_h,rate_C_per_h,to_F,to_C";
        };
    return Stream.concat(
            Stream.of("step,segment," + heads + ",stay_min,then"),
            table().body().stream()
                .map(
                    row ->
                        row.stream()
                            .map(cell -> cell.replace(',', ';'))
                            .collect(Collectors.joining(","))))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /** Rounded down, so that no limit of the kiln is passed. */
  private static String rate(double perHour) {
    return Amounts.number(perHour < 0 ? Math.ceil(perHour) : Math.floor(perHour), 0);
  }

  /** To 5 F, as everywhere. */
  private static String fahrenheit(ProgramLine line) {
    return Columns.toFive(Temperature.ofCelsius(line.toC()).fahrenheit());
  }
}
