package seamsoak.report;

import java.util.List;
import java.util.Optional;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.CriticalTemperatures;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.GrainWords;

/** The schedule row by row: its heats, what is left after them, what they rest on. */
record ScheduleTables(ScheduleAdvice schedule, UnitSystem units) {
  /** More do not fit beside the rest. */
  private static final int MOST_STEELS = 3;

  /** One row for each step. */
  Table heatsTable() {
    return Columns.of(List.copyOf(schedule.byStep().entrySet()), units)
        .words("step", e -> e.getKey().words())
        .heatIfKnown("to", e -> part(e.getValue(), Segment.Kind.HOLD).map(Segment::toC))
        .words("rise min", e -> minutes(e.getValue(), Segment.Kind.RISE))
        .words("hold min", e -> minutes(e.getValue(), Segment.Kind.HOLD))
        .words("then", e -> then(e.getValue()))
        .words("down in min", e -> minutes(e.getValue(), Segment.Kind.COOL))
        .captioned("The schedule; the rise is for a kiln that is at heat, down in air is to black");
  }

  private static Optional<Segment> part(List<Segment> parts, Segment.Kind kind) {
    return parts.stream().filter(s -> s.kind() == kind).findFirst();
  }

  private static String then(List<Segment> parts) {
    return parts.stream()
        .flatMap(s -> s.cool().stream())
        .map(Coolant::word)
        .distinct()
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  private static String minutes(List<Segment> parts, Segment.Kind kind) {
    double sum = parts.stream().filter(s -> s.kind() == kind).mapToDouble(Segment::minutes).sum();
    return sum == 0 ? "-" : sum < 0.95 ? Amounts.number(sum, 1) : Amounts.number(sum, 0);
  }

  /** Where each steel lets go of the magnet. */
  Table magnetTable() {
    return Columns.of(schedule.critical(), units)
        .words("steel", CriticalTemperatures::steel)
        .heatIfKnown("from", CriticalTemperatures::magnetLowC)
        .heatIfKnown("to", CriticalTemperatures::magnetHighC)
        .captioned("Where the magnet lets go on the way up");
  }

  /** What is left after each step. */
  Table afterTable() {
    List<String> steels =
        schedule.after().stream()
            .flatMap(a -> a.layers().stream())
            .map(StageReport.LayerCarbon::steel)
            .distinct()
            .limit(MOST_STEELS)
            .toList();
    Columns<After> table =
        Columns.of(schedule.after(), units)
            .words("after", a -> a.step().words())
            .words("lines", a -> Integer.toString(a.linesVisible()))
            .percent("lacks C %", After::deepestMissingPct)
            .number("grain", 1, After::grainAstm);
    steels.forEach(s -> table.numberIfKnown("C % " + s, 2, a -> BilletTables.mean(a.layers(), s)));
    return table.captioned(
        "What is left: sets of seams that show, carbon missing at the deepest, ASTM grain number ("
            + GrainWords.GIVE_OR_TAKE
            + "),"
            + " mean carbon of each steel");
  }

  /** What the fires take from the faces. */
  Table skinTable() {
    return Columns.of(schedule.after(), units)
        .words("after", a -> a.step().words())
        .length("skin", After::skinMm)
        .length("sides", After::sideSkinMm)
        .length("soft", After::softMm)
        .length("sides", After::sideSoftMm)
        .captioned(BilletTables.SKIN);
  }

  Table criticalTable() {
    return Columns.of(schedule.critical(), units)
        .words("steel", CriticalTemperatures::steel)
        .percent("C %", CriticalTemperatures::carbonPct)
        .heatIfKnown("Ac1", CriticalTemperatures::ac1C)
        .heatIfKnown("full", CriticalTemperatures::upperC)
        .heatIfKnown("Ms", CriticalTemperatures::msC)
        .captioned("Critical temperatures with the carbon that each steel has by then");
  }
}
