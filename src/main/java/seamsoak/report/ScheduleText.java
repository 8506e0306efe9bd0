package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.schedule.Conflict;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.ScheduleAdvice.CriticalTemperatures;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.schedule.StepKind;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.ConflictWords;

/** The schedule in words: the heats as a table, why and what to check, what comes of it. */
record ScheduleText(Advice advice, UnitSystem units) {
  /** More do not fit beside the rest. */
  private static final int MOST_STEELS = 3;

  private Amounts amounts() {
    return new Amounts(units);
  }

  private List<Segment> segments() {
    return advice.schedule().segments();
  }

  /** The heats in one sentence. */
  List<String> answer() {
    List<String> all = new ArrayList<>();
    if (!advice.soak().clears()) {
      all.add("No soak clears the lines within what is allowed; this is the schedule without one.");
    }
    all.addAll(told());
    return all;
  }

  /** The same where the soak has been told. */
  List<String> told() {
    List<String> parts = new ArrayList<>();
    slowly().ifPresent(parts::add);
    advice.schedule().steps().forEach(s -> brief(s).ifPresent(parts::add));
    String first = parts.isEmpty() ? "Nothing to do" : String.join(", ", parts);
    List<String> all = new ArrayList<>(List.of(SoakText.capital(first) + "."));
    if (advice.schedule().blade().isEmpty()) {
      all.addAll(unhardened());
    }
    return all;
  }

  /** A heat in a few words; of the cycles the last stands for all. */
  private Optional<String> brief(ScheduleAdvice.Step s) {
    String at = s.temperatureC().map(amounts()::heat).orElse("");
    long cycles =
        advice.schedule().steps().stream().filter(o -> o.step().kind() == StepKind.REFINE).count();
    String words =
        switch (s.step().kind()) {
          case COOL_DOWN, GRIND, TEST_ETCH, SUB_ZERO -> "";
          case SOAK -> "soak at " + at + " for " + amounts().time(s.holdMinutes().orElse(0.0));
          case REFINE ->
              s.step().number() != 0 && s.step().number() < cycles
                  ? ""
                  : (cycles == 1 ? "one cycle at " : cycles + " cycles down to ") + at;
          case HARDEN ->
              "harden from "
                  + at
                  + advice.schedule().blade().map(b -> " in " + b.quenchantName()).orElse("");
          case TEMPER -> s.step().number() > 1 ? "" : "temper twice at " + at + edge();
          case NORMALIZE, ANNEAL, STRESS_RELIEF, PRE_HEAT -> s.step().words() + " at " + at;
        };
    return Optional.of(words).filter(w -> !w.isEmpty());
  }

  /** A cool-down that is more than laying the billet aside. */
  private Optional<String> slowly() {
    return segments().stream()
        .filter(s -> s.step().kind() == StepKind.COOL_DOWN)
        .findFirst()
        .filter(s -> !s.cool().equals(Optional.of(Coolant.Plain.AIR)))
        .map(
            s ->
                s.in() == Heater.KILN
                    ? "from the last forging heat into the kiln at " + amounts().heat(s.toC())
                    : "bury it in dry vermiculite or ash after the last forging heat");
  }

  /** Why nothing is hardened. */
  private List<String> unhardened() {
    return advice.schedule().conflicts().stream()
        .filter(Conflict::leavesSoft)
        .map(new ConflictWords(units)::said)
        .map(c -> "It is not hardened here: " + c.says() + ". " + SoakText.capital(c.todo()) + ".")
        .toList();
  }

  private String edge() {
    return advice
        .schedule()
        .blade()
        .flatMap(
            b ->
                b.steels().stream()
                    .filter(q -> q.steel().equals(b.edge()))
                    .findFirst()
                    .map(q -> ", for about " + Amounts.number(q.temperedHrc(), 0) + " HRC"))
        .orElse("");
  }

  /** One row for each step. */
  Table heatsTable() {
    return Columns.of(List.copyOf(advice.schedule().byStep().entrySet()), units)
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
    return Columns.of(advice.schedule().critical(), units)
        .words("steel", CriticalTemperatures::steel)
        .heat("from", CriticalTemperatures::magnetLowC)
        .heat("to", CriticalTemperatures::magnetHighC)
        .captioned("Where the magnet lets go on the way up");
  }

  /** What is left after each step. */
  Table afterTable() {
    List<String> steels =
        advice.schedule().after().stream()
            .flatMap(a -> a.layers().stream())
            .map(StageReport.LayerCarbon::steel)
            .distinct()
            .limit(MOST_STEELS)
            .toList();
    Columns<After> table =
        Columns.of(advice.schedule().after(), units)
            .words("after", a -> a.step().words())
            .words("lines", a -> Integer.toString(a.linesVisible()))
            .percent("lacks C %", After::deepestMissingPct)
            .number("grain", 1, After::grainAstm)
            .length("skin", After::skinMm);
    steels.forEach(s -> table.numberIfKnown("C % " + s, 2, a -> BilletText.mean(a.layers(), s)));
    return table.captioned(
        "What is left: sets of seams that show, carbon missing at the deepest, ASTM grain number,"
            + " skin to grind, mean carbon of each steel");
  }

  Table criticalTable() {
    return Columns.of(advice.schedule().critical(), units)
        .words("steel", CriticalTemperatures::steel)
        .percent("C %", CriticalTemperatures::carbonPct)
        .heat("Ac1", CriticalTemperatures::ac1C)
        .heat("full", CriticalTemperatures::upperC)
        .heat("Ms", CriticalTemperatures::msC)
        .captioned("Critical temperatures with the carbon that each steel has by then");
  }
}
