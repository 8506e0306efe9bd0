package seamsoak.kiln;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import seamsoak.billet.Billet;
import seamsoak.schedule.CriticalTemperatures;
import seamsoak.schedule.Margins;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Conflict;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/** From where to where a heat does for a billet's step, by what its schedule asks of its steels. */
record Windows(Billet billet, ScheduleAdvice schedule) {
  /** Hotter than planned without a sheet, K: half of the 100 F that most sheets' ranges span. */
  private static final double ABOVE_PLANNED = 28;

  /** A hold below Ac1 is not drawn out beyond that to suit another, min; judgement. */
  private static final double LONGEST = 240;

  /** A pre-heat may be that much cooler, K; judgement: it only has to be below Ac1 and even. */
  private static final double PRE_HEAT_SPAN = 50;

  /** Hardness that a temper may come out beside the one planned, HRC: a tester's own; judgement. */
  private static final double APART_HRC = 1;

  static TemperatureRange preHeat(double planned) {
    return new TemperatureRange(planned - PRE_HEAT_SPAN, planned);
  }

  /** Above what its steels need to change throughout, within what their sheets share. */
  TemperatureRange normalize(double planned) {
    double least =
        Math.max(
            hottest(c -> c.upperC().orElse(0.0)) + Margins.NORMALIZE_LEAST_ABOVE,
            schedule.blade().map(ScheduleAdvice.Outcome::hardenC).orElse(0.0));
    Optional<TemperatureRange> sheets =
        shared(StepKind.NORMALIZE).filter(r -> planned >= r.lowC() - 1 && planned <= r.highC() + 1);
    return sheets
        .map(r -> new TemperatureRange(Math.max(least, r.lowC()), r.highC()))
        .orElse(new TemperatureRange(least, planned + ABOVE_PLANNED));
  }

  /**
   * Above what makes new grains; the last no hotter than a hardening heat, others than the first.
   */
  TemperatureRange refine(double planned, int fromEnd, Task task) {
    double least =
        hottest(
            c ->
                Math.max(
                    c.ac1C().orElse(0.0) + Margins.CYCLE_ABOVE_AC1,
                    c.upper().equals("Ac3") ? c.upperC().orElse(0.0) : 0));
    boolean kept = task instanceof Task.LastRefine last && last.below().isPresent();
    double most =
        kept
            ? planned
            : fromEnd == 0
                ? hardening().map(TemperatureRange::highC).orElse(planned)
                : planned(StepKind.NORMALIZE).orElse(planned);
    return new TemperatureRange(least, most);
  }

  TemperatureRange anneal(double planned, Hold hold) {
    if (hold instanceof Hold.Same) {
      return below(planned, hold);
    }
    double least = hottest(c -> c.ac1C().orElse(0.0)) + Margins.ANNEAL_FROM_CRITICAL;
    double most =
        planned(StepKind.REFINE)
            .or(() -> schedule.blade().map(ScheduleAdvice.Outcome::hardenC))
            .map(c -> c - Margins.ANNEAL_BELOW_LAST)
            .orElse(planned);
    Optional<TemperatureRange> sheets = shared(StepKind.ANNEAL);
    return new TemperatureRange(
        Math.max(least, sheets.map(TemperatureRange::lowC).orElse(planned)),
        Math.min(most, sheets.map(TemperatureRange::highC).orElse(planned)));
  }

  /** As cool as a longer hold makes up for, never hotter. */
  static TemperatureRange below(double planned, Hold hold) {
    double coolest =
        hold instanceof Hold.Same same && same.minutes() < LONGEST
            ? same.celsius(LONGEST)
            : planned;
    return new TemperatureRange(coolest, planned);
  }

  TemperatureRange harden(double planned) {
    boolean kept =
        schedule.steps().stream()
            .anyMatch(s -> s.task() instanceof Task.LastRefine l && l.below().isPresent());
    TemperatureRange window = hardening().orElse(new TemperatureRange(planned, planned));
    return new TemperatureRange(window.lowC(), kept ? planned : window.highC());
  }

  /** What the windows of its steels share, or that of the edge where they share nothing. */
  private Optional<TemperatureRange> hardening() {
    List<Conflict.Window> windows =
        schedule.steps().stream()
            .map(ScheduleAdvice.Step::task)
            .filter(Task.Harden.class::isInstance)
            .flatMap(t -> ((Task.Harden) t).windows().stream())
            .toList();
    Optional<TemperatureRange> all =
        meeting(windows.stream().map(w -> new TemperatureRange(w.lowC(), w.highC())).toList());
    String edge = schedule.blade().map(ScheduleAdvice.Outcome::edge).orElse("");
    return all.or(
        () ->
            windows.stream()
                .filter(w -> w.steel().equals(edge))
                .map(w -> new TemperatureRange(w.lowC(), w.highC()))
                .findFirst());
  }

  /** Where the edge comes out within a point of what was planned. */
  TemperatureRange temper(double planned) {
    double wanted = hrc(planned).orElse(0);
    List<Double> within =
        tempers().stream()
            .filter(t -> Math.abs(t.hrc() - wanted) <= APART_HRC)
            .map(ScheduleAdvice.Tempered::temperatureC)
            .toList();
    return within.isEmpty()
        ? new TemperatureRange(planned, planned)
        : new TemperatureRange(within.get(0), within.get(within.size() - 1));
  }

  /** Hardness of the edge after the tempers at a heat, from the next that was reckoned. */
  OptionalDouble hrc(double celsius) {
    return tempers().stream()
        .min(Comparator.comparingDouble(t -> Math.abs(t.temperatureC() - celsius)))
        .map(t -> OptionalDouble.of(t.hrc()))
        .orElse(OptionalDouble.empty());
  }

  private List<ScheduleAdvice.Tempered> tempers() {
    return schedule.blade().map(ScheduleAdvice.Outcome::tempers).orElse(List.of());
  }

  /** Where the first of its steels begins to change, C. */
  double lowestAc1() {
    return schedule.critical().stream()
        .flatMap(c -> c.ac1C().stream())
        .mapToDouble(c -> c)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The last heat planned for a kind of step. */
  private Optional<Double> planned(StepKind kind) {
    return schedule.steps().stream()
        .filter(s -> s.step().kind() == kind)
        .flatMap(s -> s.temperatureC().stream())
        .reduce((first, next) -> next);
  }

  /** The most that its hardening steels ask for; of all where none hardens. */
  private double hottest(ToDoubleFunction<CriticalTemperatures> asks) {
    List<String> hard = hardeningSteels();
    return schedule.critical().stream()
        .filter(c -> hard.isEmpty() || hard.contains(c.steel()))
        .mapToDouble(asks)
        .max()
        .orElse(0);
  }

  private List<String> hardeningSteels() {
    return schedule.blade().stream()
        .flatMap(b -> b.steels().stream())
        .map(ScheduleAdvice.Quenched::steel)
        .toList();
  }

  /** What the sheets of its hardening steels share for a kind of step. */
  private Optional<TemperatureRange> shared(StepKind kind) {
    List<String> hard = hardeningSteels();
    return meeting(
        billet.stack().steels().stream()
            .distinct()
            .filter(s -> hard.isEmpty() || hard.contains(s.id()))
            .flatMap(s -> sheet(s, kind).stream())
            .toList());
  }

  private static Optional<TemperatureRange> sheet(Steel steel, StepKind kind) {
    return kind == StepKind.NORMALIZE
        ? steel.heatTreatment().normalize()
        : steel.heatTreatment().anneal();
  }

  private static Optional<TemperatureRange> meeting(List<TemperatureRange> ranges) {
    double low = ranges.stream().mapToDouble(TemperatureRange::lowC).max().orElse(1);
    double high = ranges.stream().mapToDouble(TemperatureRange::highC).min().orElse(0);
    return low <= high ? Optional.of(new TemperatureRange(low, high)) : Optional.empty();
  }
}
