package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.steel.Hardenability;
import seamsoak.steel.TemperatureRange;

/**
 * Anneals and stress relief: which, how hot, and why.
 *
 * @param course the piece
 * @param guard how it may be cooled from above the critical range
 * @param harden the heat to come, if there is one
 * @param treated what was done before
 */
record Softening(Course course, Guard guard, Optional<HardeningHeat> harden, Treated treated) {
  private static final double RELIEF_BELOW_ANNEAL = 15;
  private static final double RELIEF_AT_MOST = 650;

  /** Slowest cooling that sheets ask for without saying, C/h. */
  private static final double SLOW = 22;

  private static final double FULL_TO = 540;

  /** Below this no more pearlite forms in a slow fall. */
  private static final double PEARLITE_TO = 650;

  private static final double MINUTES = 60;

  /** To temper what has hardened; judgement. */
  private static final double MINUTES_OF_HARD = 120;

  /** Kinds of anneal. */
  enum Kind {
    FULL,
    SPHEROIDIZE,
    SUBCRITICAL
  }

  /**
   * After the cycles nothing may be hotter than they were, or the grains grow that they made: what
   * hardens in air is then tempered below Ac1, unless the sheets of all share an anneal so cool.
   */
  Kind kind() {
    List<SteelNow> steels = course.steels();
    // The fire may have taken their carbon; and no fire but a kiln falls as slowly as the others
    // ask.
    if (steels.stream().noneMatch(SteelNow::hardens) || !course.heats().kiln()) {
      return Kind.SUBCRITICAL;
    }
    if (lastCycleC().isEmpty()) {
      return belowAc1(steels).isPresent() ? Kind.SUBCRITICAL : Kind.FULL;
    }
    if (guard.slow()) {
      return shared(steels)
              .filter(c -> c <= lastCycleC().get() - Margins.ANNEAL_BELOW_LAST)
              .isPresent()
          ? Kind.FULL
          : Kind.SUBCRITICAL;
    }
    return guard.way() == Guard.Way.AIR && !excess(steels).isEmpty()
        ? Kind.SPHEROIDIZE
        : Kind.SUBCRITICAL;
  }

  /**
   * The sheet's anneal of a steel that hardens in air and is annealed below Ac1 only: no kiln falls
   * so slowly that its austenite changes.
   */
  private static Optional<TemperatureRange> belowAc1(List<SteelNow> steels) {
    return steels.stream()
        .filter(s -> s.hardens() && s.neverNormalized())
        .flatMap(s -> s.steel().heatTreatment().anneal().filter(r -> r.highC() < s.ac1C()).stream())
        .min(Comparator.comparingDouble(TemperatureRange::highC));
  }

  private Optional<Double> lastCycleC() {
    return course.planned().stream()
        .filter(s -> s.kind() == StepKind.REFINE)
        .reduce((first, next) -> next)
        .flatMap(ScheduleStep::hold)
        .map(Leg::toC)
        .or(treated::lastCycleC);
  }

  Course anneal() {
    if (treated.annealed()) {
      return course;
    }
    List<SteelNow> steels = course.steels();
    double rate = rate(steels);
    return switch (kind()) {
      case FULL -> {
        double celsius = fullCelsius(steels);
        double to = guard.slow() ? FULL_TO : PEARLITE_TO;
        yield slowly(celsius, to, rate, new Task.FullAnneal(celsius, to, rate, guard));
      }
      case SPHEROIDIZE -> {
        double celsius = spheroidizeCelsius(steels);
        List<String> excess = excess(steels).stream().map(SteelNow::id).toList();
        Task task = new Task.Spheroidize(celsius, PEARLITE_TO, rate, excess);
        yield slowly(celsius, PEARLITE_TO, rate, task);
      }
      case SUBCRITICAL -> subCritical();
    };
  }

  /** In a forge nothing is held below red for an hour: it is brought there and buried. */
  private Course subCritical() {
    List<SteelNow> steels = course.steels();
    Heats heats = course.heats();
    double unchanged = unchangedCelsius(steels);
    double celsius = belowAc1(steels).map(r -> Math.min(unchanged, r.highC())).orElse(unchanged);
    SteelNow lowest = lowest(steels);
    boolean air = guard.way() == Guard.Way.AIR;
    boolean buried = heats.heater(celsius) == Heater.FORGE;
    ScheduleStep step =
        new ScheduleStep(
            StepName.only(StepKind.ANNEAL),
            course.open(celsius),
            buried ? thenBuried(celsius) : thenAir(celsius, air ? MINUTES : MINUTES_OF_HARD),
            new Task.SubCriticalAnneal(celsius, lowest.id(), lowest.lowestAc1C(), buried, guard),
            List.of(buried ? Check.Look.STILL_MAGNETIC : Check.Look.NEVER_ABOVE));
    return buried && air ? course.carry(step) : course.carry(step, Structures.softened(steels));
  }

  private List<Leg> thenBuried(double celsius) {
    List<Leg> legs = new ArrayList<>(course.heats().upAndHold(celsius, Heats.FORGE_MINUTES));
    legs.add(course.heats().buried(celsius));
    return legs;
  }

  private List<Leg> thenAir(double celsius, double minutes) {
    List<Leg> legs = new ArrayList<>(course.heats().upAndHold(celsius, minutes));
    legs.addAll(course.heats().air(celsius));
    return legs;
  }

  private Course slowly(double celsius, double to, double rate, Task task) {
    Heats heats = course.heats();
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, 30));
    legs.add(heats.falling(celsius, to, rate));
    legs.addAll(heats.air(to));
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.ANNEAL),
            course.open(celsius),
            legs,
            task,
            List.of(Check.Look.FILE_BITES)),
        Structures.softened(course.steels()));
  }

  /** Left out where there is but a forge to hold it in. */
  Course stressRelief() {
    double celsius =
        Math.min(RELIEF_AT_MOST, unchangedCelsius(course.steels()) - RELIEF_BELOW_ANNEAL);
    return course.heats().heater(celsius) == Heater.FORGE
        ? course
        : course.carry(
            new ScheduleStep(
                StepName.only(StepKind.STRESS_RELIEF),
                course.open(celsius),
                thenAir(celsius, MINUTES),
                new Task.StressRelief(celsius),
                List.of(Check.Look.STRAIGHT)));
  }

  /** The hottest at which surely none of its steels changes. */
  private static double unchangedCelsius(List<SteelNow> steels) {
    return 5 * Math.floor(Math.min(RELIEF_AT_MOST + 150, lowest(steels).unchangedToC()) / 5);
  }

  /** The steel that changes first; one that never changes does not count. */
  private static SteelNow lowest(List<SteelNow> steels) {
    return steels.stream()
        .reduce((a, b) -> b.unchangedToC() < a.unchangedToC() ? b : a)
        .orElseThrow();
  }

  private static List<SteelNow> excess(List<SteelNow> steels) {
    return steels.stream().filter(s -> s.hardens() && s.overEutectoid()).toList();
  }

  /**
   * Between Ac1 and Accm of the steel with the most carbon to gather, in its published range as far
   * and the last cycle allow: once all carbide is dissolved pearlite comes out again, not grains.
   */
  private double spheroidizeCelsius(List<SteelNow> steels) {
    SteelNow most =
        excess(steels).stream().max(Comparator.comparingDouble(SteelNow::carbonPct)).orElseThrow();
    double low = most.ac1C() + Margins.ANNEAL_FROM_CRITICAL;
    double last = lastCycleC().orElseThrow() - Margins.ANNEAL_BELOW_LAST;
    double high = Math.max(low, Math.min(last, most.upperC() - Margins.ANNEAL_FROM_CRITICAL));
    double wanted =
        range(most).map(r -> (r.lowC() + r.highC()) / 2).orElse(low + Margins.ANNEAL_FROM_CRITICAL);
    return HardeningHeat.round(Math.max(low, Math.min(high, wanted)));
  }

  /** Where the sheets of all its hardening steels share a slow anneal. */
  private static Optional<Double> shared(List<SteelNow> steels) {
    List<SteelNow> hard = steels.stream().filter(SteelNow::hardens).toList();
    List<TemperatureRange> ranges = hard.stream().flatMap(s -> range(s).stream()).toList();
    double low = ranges.stream().mapToDouble(TemperatureRange::lowC).max().orElse(0);
    double high = ranges.stream().mapToDouble(TemperatureRange::highC).min().orElse(0);
    return ranges.size() < hard.size() || low > high
        ? Optional.empty()
        : Optional.of(Math.max(low, Math.min(high, HardeningHeat.round((low + high) / 2))));
  }

  /**
   * In the range that the sheets share, else of the deepest of them, but cooler than what is to be
   * hardened from: there its carbide stays, and so do its grains.
   */
  private double fullCelsius(List<SteelNow> steels) {
    double own =
        shared(steels)
            .orElseGet(
                () ->
                    steels.stream()
                        .filter(SteelNow::hardens)
                        .max(
                            Comparator.comparing(
                                    (SteelNow s) ->
                                        s.steel().hardenability().orElse(Hardenability.NONE))
                                .thenComparing(SteelNow::carbonPct))
                        .map(
                            s ->
                                HardeningHeat.round(
                                    range(s)
                                        .map(r -> (r.lowC() + r.highC()) / 2)
                                        .orElse(s.ac1C() + 40)))
                        .orElseThrow());
    return harden.map(h -> Math.min(own, h.celsius() - Margins.ANNEAL_BELOW_LAST)).orElse(own);
  }

  /** The published range; ranges below Ac1 are of sub-critical anneals and do not count. */
  private static Optional<TemperatureRange> range(SteelNow s) {
    return s.steel().heatTreatment().anneal().filter(r -> r.highC() > s.ac1C());
  }

  private static double rate(List<SteelNow> steels) {
    return steels.stream()
        .filter(SteelNow::hardens)
        .map(s -> s.steel().heatTreatment().annealRateCPerHour())
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min()
        .orElse(SLOW);
  }
}
