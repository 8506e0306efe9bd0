package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import seamsoak.steel.Hardenability;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.HeatingRate;

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

  private Kind kind(List<SteelNow> steels, Guard guard) {
    // The fire may have taken their carbon; and no fire but a kiln falls as slowly as the others
    // ask.
    if (steels.stream().noneMatch(SteelNow::hardens) || !course.heats().kiln()) {
      return Kind.SUBCRITICAL;
    }
    if (guard.way() != Guard.Way.AIR) {
      return Kind.FULL;
    }
    return steels.stream().anyMatch(s -> s.hardens() && s.overEutectoid())
        ? Kind.SPHEROIDIZE
        : Kind.SUBCRITICAL;
  }

  Kind anneal(Guard guard) {
    List<SteelNow> steels = course.steels();
    Kind kind = kind(steels, guard);
    switch (kind) {
      case FULL ->
          slowly(
              steels,
              annealCelsius(steels),
              guard.slow() ? FULL_TO : PEARLITE_TO,
              "Full anneal at ",
              guard.because() + "; only a slow fall makes it soft enough to saw, drill and grind");
      case SPHEROIDIZE ->
          slowly(
              steels,
              spheroidizeCelsius(steels),
              PEARLITE_TO,
              "Spheroidize at ",
              overEutectoid(steels)
                  + (excess(steels).size() == 1 ? " holds" : " hold")
                  + " more carbon than pearlite does: this gathers it in small round grains,"
                  + " soft to work and even in the quench, not in brittle films. It wants the longer"
                  + " hold when hardening");
      case SUBCRITICAL -> subCritical(steels, guard);
    }
    return kind;
  }

  private void subCritical(List<SteelNow> steels, Guard guard) {
    Heats heats = course.heats();
    double celsius = belowAc1(steels, BELOW_AC1);
    boolean hardened = guard.way() != Guard.Way.AIR;
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, hardened ? 120 : 60));
    legs.addAll(heats.air(celsius));
    course.carry(
        step(
            "anneal",
            heats,
            "Sub-critical anneal at " + course.show(celsius) + ", then still air",
            lowest(steels).id()
                + " begins to change near "
                + course.show(lowest(steels).ac1C())
                + "; below that nothing does, so the fine grain stays. "
                + (hardened
                    ? capital(guard.because())
                        + ": what did is tempered soft enough here to saw, drill and grind. A slow"
                        + " fall would do it better, and needs a kiln"
                    : "No steel of it hardens in air, so more is not needed to saw, drill and grind"
                        + " it"),
            List.of("never above that heat: no color brighter than a dull red in shade"),
            celsius,
            legs),
        Structures.softened(steels));
  }

  private void slowly(List<SteelNow> steels, double celsius, double to, String doing, String why) {
    Heats heats = course.heats();
    double rate = rate(steels);
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, 30));
    legs.add(heats.falling(celsius, to, rate));
    legs.addAll(heats.air(to));
    course.carry(
        step(
            "anneal",
            heats,
            doing
                + course.show(celsius)
                + ", then down to "
                + course.show(to)
                + " no faster than "
                + new HeatingRate(rate).format(course.units),
            why + ". It may bring a faint line back to sight",
            List.of("a file bites everywhere"),
            celsius,
            legs),
        Structures.softened(steels));
  }

  void stressRelief() {
    List<SteelNow> steels = course.steels();
    Heats heats = course.heats();
    double celsius = Math.min(RELIEF_AT_MOST, belowAc1(steels, RELIEF_BELOW_AC1));
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, 60));
    legs.addAll(heats.air(celsius));
    course.carry(
        step(
            "stress relief",
            heats,
            "Hold the ground blade straight at " + course.show(celsius) + ", then still air",
            "grinding and straightening leave strain that warps a thin blade in the quench",
            List.of("straight along spine and edge before and after; straighten now, not later"),
            celsius,
            legs),
        List.of());
  }

  private static ScheduleStep step(
      String name,
      Heats heats,
      String doing,
      String why,
      List<String> checks,
      double celsius,
      List<Leg> legs) {
    return new ScheduleStep(
        name,
        heats.heater(celsius),
        doing,
        why,
        checks,
        legs,
        heats.shop().edge(seamsoak.billet.Exposure.OPEN),
        Set.of(),
        Optional.empty());
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

  private static String overEutectoid(List<SteelNow> steels) {
    return String.join(", ", excess(steels).stream().map(SteelNow::id).toList());
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

  private static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
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
