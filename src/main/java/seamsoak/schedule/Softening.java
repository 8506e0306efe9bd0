package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.steel.Hardenability;
import seamsoak.steel.TemperatureRange;

/** Anneals and stress relief: which, how hot, and why. */
record Softening(Course course) {
  /** Below the lowest Ac1 when nothing may turn to austenite, K: twice the band of Ac1. */
  private static final double BELOW_AC1 = 25;

  private static final double RELIEF_BELOW_AC1 = 40;
  private static final double RELIEF_AT_MOST = 650;

  /** Slowest cooling that sheets ask for without saying, C/h. */
  private static final double SLOW = 22;

  private static final double FULL_TO = 540;

  /** Below this no more pearlite forms in a slow fall. */
  private static final double PEARLITE_TO = 650;

  /** Least above Ac1 to dissolve what must dissolve, and least below Accm to leave seeds, K. */
  private static final double LEAST_FROM_CRITICAL = 15;

  /** Kinds of anneal. */
  enum Kind {
    FULL,
    SPHEROIDIZE,
    SUBCRITICAL
  }

  Kind kind(Guard guard) {
    List<SteelNow> steels = course.steels();
    // The fire may have taken their carbon; and no fire but a kiln falls as slowly as the others
    // ask.
    if (steels.stream().noneMatch(SteelNow::hardens) || !course.heats().kiln()) {
      return Kind.SUBCRITICAL;
    }
    if (guard.way() != Guard.Way.AIR) {
      return Kind.FULL;
    }
    return excess(steels).isEmpty() ? Kind.SUBCRITICAL : Kind.SPHEROIDIZE;
  }

  Course anneal(Guard guard) {
    List<SteelNow> steels = course.steels();
    double rate = rate(steels);
    return switch (kind(guard)) {
      case FULL -> {
        double celsius = annealCelsius(steels);
        double to = guard.slow() ? FULL_TO : PEARLITE_TO;
        yield slowly(celsius, to, rate, new Task.FullAnneal(celsius, to, rate, guard));
      }
      case SPHEROIDIZE -> {
        double celsius = spheroidizeCelsius(steels);
        List<String> excess = excess(steels).stream().map(SteelNow::id).toList();
        Task task = new Task.Spheroidize(celsius, PEARLITE_TO, rate, excess);
        yield slowly(celsius, PEARLITE_TO, rate, task);
      }
      case SUBCRITICAL -> subCritical(guard);
    };
  }

  private Course subCritical(Guard guard) {
    List<SteelNow> steels = course.steels();
    double celsius = belowAc1(steels, BELOW_AC1);
    SteelNow lowest = lowest(steels);
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.ANNEAL),
            course.open(celsius),
            thenAir(celsius, guard.way() == Guard.Way.AIR ? 60 : 120),
            new Task.SubCriticalAnneal(celsius, lowest.id(), lowest.ac1C(), guard),
            List.of(Check.Look.NEVER_ABOVE)),
        Structures.softened(steels));
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

  Course stressRelief() {
    double celsius = Math.min(RELIEF_AT_MOST, belowAc1(course.steels(), RELIEF_BELOW_AC1));
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.STRESS_RELIEF),
            course.open(celsius),
            thenAir(celsius, 60),
            new Task.StressRelief(celsius),
            List.of(Check.Look.STRAIGHT)));
  }

  private static double belowAc1(List<SteelNow> steels, double by) {
    return 5 * Math.floor((lowest(steels).ac1C() - by) / 5);
  }

  /** The steel that changes first; one that never changes does not count. */
  private static SteelNow lowest(List<SteelNow> steels) {
    return steels.stream()
        .filter(s -> !s.lines().alwaysAustenite())
        .reduce((a, b) -> b.ac1C() < a.ac1C() ? b : a)
        .orElse(steels.get(0));
  }

  private static List<SteelNow> excess(List<SteelNow> steels) {
    return steels.stream().filter(s -> s.hardens() && s.overEutectoid()).toList();
  }

  /**
   * Between Ac1 and Accm of the steel with the most carbon to gather, in its published range as far
   * as that allows: once all carbide is dissolved pearlite comes out again, not grains.
   */
  private static double spheroidizeCelsius(List<SteelNow> steels) {
    SteelNow most =
        excess(steels).stream().max(Comparator.comparingDouble(SteelNow::carbonPct)).orElseThrow();
    double low = most.ac1C() + LEAST_FROM_CRITICAL;
    double high = Math.max(low, most.upperC() - LEAST_FROM_CRITICAL);
    double wanted =
        range(most).map(r -> (r.lowC() + r.highC()) / 2).orElse(low + LEAST_FROM_CRITICAL);
    return HardeningHeat.round(Math.max(low, Math.min(high, wanted)));
  }

  /** In the range that the sheets of its hardening steels share, else of the deepest of them. */
  private static double annealCelsius(List<SteelNow> steels) {
    double least = 0;
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    List<SteelNow> hard = steels.stream().filter(SteelNow::hardens).toList();
    for (SteelNow s : hard) {
      least = Math.max(least, s.ac1C() + 20);
      low = Math.max(low, range(s).map(TemperatureRange::lowC).orElse(0.0));
      high = Math.min(high, range(s).map(TemperatureRange::highC).orElse(high));
    }
    if (low > high || low == 0) {
      Optional<TemperatureRange> own =
          hard.stream()
              .max(
                  Comparator.comparing(
                          (SteelNow s) -> s.steel().hardenability().orElse(Hardenability.NONE))
                      .thenComparing(SteelNow::carbonPct))
              .flatMap(Softening::range);
      low = own.map(TemperatureRange::lowC).orElse(least);
      high = own.map(TemperatureRange::highC).orElse(least + 40);
    }
    double middle = HardeningHeat.round((low + high) / 2);
    return Math.max(Math.min(least, high), Math.max(low, Math.min(high, middle)));
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
