package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import seamsoak.heat.HeatCurve;
import seamsoak.steel.TemperatureRange;

/** Normalizing, and the cycles that refine the grain as far as it pays. */
record Cycles(Course course) {
  /** Above the highest upper critical temperature when normalizing, K (common glossary: 38). */
  static final double NORMALIZE_ABOVE = 40;

  /** Least above it, where published ranges are cooler, K; judgement. */
  private static final double LEAST_ABOVE = 15;

  /** Fine enough for a blade: finer shows in no fracture and costs hardening depth; judgement. */
  static final double FINE_ENOUGH = 10;

  /** A cycle that gains less than this many numbers is not worth its scale; judgement. */
  private static final double LEAST_GAIN = 0.5;

  /** Steel that hardens deeper than this loses nothing that matters to fine grain; judgement. */
  private static final double DEEP_METRES = 60e-3;

  static final int MOST_CYCLES = 5;
  private static final double CYCLE_MINUTES = 5;

  /** A temperature and what the grain comes to. */
  private record Plan(List<Double> celsius, double metres, double oneMoreMetres) {}

  /** The temperature to normalize at, drawn into the range that its steels' sheets share. */
  static double normalizeCelsius(List<SteelNow> steels) {
    SteelNow highest = highest(steels);
    double celsius = roundUp(highest.upperC() + NORMALIZE_ABOVE, 10);
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    for (SteelNow s : hardening(steels)) {
      Optional<TemperatureRange> range = s.steel().heatTreatment().normalize();
      low = Math.max(low, range.map(TemperatureRange::lowC).orElse(0.0));
      high = Math.min(high, range.map(TemperatureRange::highC).orElse(Double.POSITIVE_INFINITY));
    }
    if (low > high) {
      // No common range: the steel that needs the most heat keeps to its own.
      Optional<TemperatureRange> own = highest.steel().heatTreatment().normalize();
      low = own.map(TemperatureRange::lowC).orElse(low);
      high = own.map(TemperatureRange::highC).orElse(celsius);
    }
    return Math.max(highest.upperC() + LEAST_ABOVE, Math.max(low, Math.min(high, celsius)));
  }

  /** Whether a heat lies in the ranges of all steels that count. */
  private static boolean shared(List<SteelNow> steels, double celsius) {
    return hardening(steels).stream()
        .map(s -> s.steel().heatTreatment().normalize())
        .flatMap(Optional::stream)
        .allMatch(r -> celsius >= r.lowC() - 0.5 && celsius <= r.highC() + 0.5);
  }

  /** Normalizes unless the guard forbids it. */
  void normalize(Guard guard, double celsius) {
    List<SteelNow> steels = course.steels();
    Heats heats = course.heats();
    double minutes = Math.max(5, Math.min(15, heats.size().thicknessMetres() * 1e3));
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, minutes));
    legs.addAll(heats.air(celsius));
    SteelNow highest = highest(steels);
    double above = celsius - highest.upperC();
    String drawn =
        celsius == roundUp(highest.upperC() + NORMALIZE_ABOVE, 10) || !shared(steels, celsius)
            ? ""
            : steels.size() == 1
                ? ", within its published range"
                : ", within the range that their sheets share";
    course.carry(
        new ScheduleStep(
            "normalize",
            heats.heater(celsius),
            "Heat to "
                + course.show(celsius)
                + String.format(
                    Locale.ROOT,
                    ", then still air to black, about %.0f min",
                    heats.minutesToBlack(celsius))
                + (guard.way() == Guard.Way.AIR_THEN_ANNEAL
                    ? "; anneal it the same day, before anything cuts it"
                    : ""),
            "takes the forging's coarse and uneven structure apart, "
                + course.apart(above)
                + " above the "
                + highest.upperName()
                + " of "
                + highest.id()
                + drawn
                + (guard.reasons().isEmpty() ? "" : "; " + guard.because()),
            List.of(magnet(steels), course.color(celsius), "no red in shade before the next heat"),
            legs,
            AfterForging.open(course),
            AfterForging.hardensInAir(guard),
            Optional.empty()),
        Structures.cooled(steels, heats, celsius, course.grainNumber(), false));
  }

  /** Cycles down to the hardening heat, as many as pay. */
  void refine(Guard guard, double from, double last) {
    Plan plan = plan(guard, from, last);
    int n = plan.celsius().size();
    double reached = course.grains().number(plan.metres());
    for (int i = 0; i < n; i++) {
      List<SteelNow> steels = course.steels();
      Heats heats = course.heats();
      double celsius = plan.celsius().get(i);
      double at = AfterForging.changesAt(steels);
      boolean end = i == n - 1;
      course.carry(
          new ScheduleStep(
              n == 1 ? "refine" : "refine " + (i + 1),
              heats.heater(celsius),
              "Heat to "
                  + course.show(celsius)
                  + ", then "
                  + heats.downInWords(guard.slow(), course.show(at), heats.heater(celsius)),
              end
                  ? "near the hardening heat: cooler would be undone by it. "
                      + String.format(Locale.ROOT, "Grain about ASTM %.0f. ", reached)
                      + oneMore(reached, course.grains().number(plan.oneMoreMetres()))
                  : "new, finer grains form each time it passes the critical range"
                      + (guard.slow() ? "; cooled slowly because " + guard.because() : ""),
              end
                  ? List.of(
                      "break a test piece hardened from "
                          + course.show(last)
                          + ": the fracture is like gray silk; if it is grainy, one more cycle")
                  : i == 0 && guard.slow()
                      ? List.of(magnet(steels), "color even through the section before you count")
                      : List.of("color even through the section before you count"),
              legs(heats, guard, celsius, at),
              AfterForging.open(course),
              AfterForging.hardensInAir(guard),
              Optional.empty()),
          Structures.cooled(
              steels, heats, celsius, course.grainNumber(), guard.slow() && heats.kiln()));
    }
  }

  /** The same curves for a piece as it is, for the samples: nothing is noted. */
  List<HeatCurve> curves(Guard guard, double normalize, double last) {
    Heats heats = course.heats();
    List<HeatCurve> all = new ArrayList<>();
    double at = AfterForging.changesAt(course.steels());
    List<Double> temperatures = new ArrayList<>();
    if (!guard.slow()) {
      temperatures.add(normalize);
    }
    temperatures.addAll(plan(guard, normalize, last).celsius());
    for (double celsius : temperatures) {
      all.add(Leg.curve(legs(heats, guard, celsius, at)));
    }
    return all;
  }

  private static List<Leg> legs(Heats heats, Guard guard, double celsius, double at) {
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, CYCLE_MINUTES));
    legs.addAll(heats.down(guard.slow(), celsius, at, heats.heater(celsius)));
    return legs;
  }

  private Plan plan(Guard guard, double from, double last) {
    Heats heats = course.heats();
    double at = AfterForging.changesAt(course.steels());
    Map<Double, HeatCurve> tried = new HashMap<>();
    DoubleFunction<HeatCurve> cycle =
        celsius -> tried.computeIfAbsent(celsius, c -> Leg.curve(legs(heats, guard, c, at)));
    double best = course.grainMetres();
    List<Double> chosen = List.of();
    for (int n = 1; n <= MOST_CYCLES; n++) {
      List<Double> celsius = descending(from, last, n);
      double metres = course.grainMetres();
      for (double c : celsius) {
        metres = course.grains().after(cycle.apply(c), metres);
      }
      double gain = course.grains().number(metres) - course.grains().number(best);
      if (n > 1 && gain < LEAST_GAIN) {
        break;
      }
      best = metres;
      chosen = celsius;
      if (course.grains().number(metres) >= FINE_ENOUGH) {
        break;
      }
    }
    return new Plan(chosen, best, course.grains().after(cycle.apply(last), best));
  }

  private static List<Double> descending(double from, double last, int n) {
    List<Double> all = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      all.add(i == n ? last : HardeningHeat.round(from + (last - from) * i / n));
    }
    return all;
  }

  private String oneMore(double number, double next) {
    SteelNow any = shallowest();
    double at = any.upperC();
    double cost =
        100
            * (1
                - any.quenched(at, SteelNow.FINEST).idealDiameterMetres()
                    / any.quenched(at, SteelNow.FINEST - 1).idealDiameterMetres());
    String gain =
        next - number < 0.1
            ? "One more cycle at this heat would gain nothing"
            : String.format(
                Locale.ROOT,
                number >= FINE_ENOUGH
                    ? "That is fine enough for a blade; one more would gain %.1f numbers"
                    : "One more at this heat would gain %.1f numbers, not worth its scale",
                next - number);
    boolean hardens = Double.isFinite(cost);
    if (!hardens || any.quenched(at, number).idealDiameterMetres() > DEEP_METRES) {
      return gain;
    }
    return String.format(
        Locale.ROOT,
        "%s; each number finer takes about %.0f %% off how deep it hardens, so too many leave plain"
            + " steel soft in the middle",
        gain,
        cost);
  }

  private SteelNow shallowest() {
    return hardening(course.steels()).stream()
        .min(
            Comparator.comparingDouble(
                s -> s.quenched(s.upperC(), FINE_ENOUGH).idealDiameterMetres()))
        .orElseThrow();
  }

  private String magnet(List<SteelNow> steels) {
    StringBuilder said = new StringBuilder("the magnet lets go on the way up, ");
    for (int i = 0; i < steels.size(); i++) {
      SteelNow s = steels.get(i);
      said.append(i == 0 ? "" : ", ")
          .append(s.id())
          .append(
              s.lines().alwaysAustenite()
                  ? " holds none"
                  : " from " + course.between(s.magnet().low(), s.magnet().high()));
    }
    return said.append(": far below this heat").toString();
  }

  private static SteelNow highest(List<SteelNow> steels) {
    return hardening(steels).stream()
        .reduce((a, b) -> b.upperC() > a.upperC() ? b : a)
        .orElseThrow();
  }

  /** Those that count for a temperature: the ones that harden, or all where none does. */
  private static List<SteelNow> hardening(List<SteelNow> steels) {
    List<SteelNow> hard = steels.stream().filter(SteelNow::hardens).toList();
    return hard.isEmpty() ? steels : hard;
  }

  private static double roundUp(double value, double step) {
    return Math.ceil(value / step - 1e-9) * step;
  }
}
