package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import seamsoak.heat.HeatCurve;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.demand.Change;
import seamsoak.schedule.demand.Down;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.steel.TemperatureRange;

/** Normalizing, and the cycles that refine the grain as far as it pays. */
record Cycles(Course course) {
  /** Above the hardening heat, where published ranges are cooler, K; judgement. */
  private static final double ABOVE_HARDENING = 15;

  /** Cycles at most where each takes hours in the kiln; judgement. */
  private static final int MOST_SLOW_CYCLES = 2;

  /** Steel that hardens deeper than this loses nothing that matters to fine grain; judgement. */
  private static final double DEEP_METRES = 60e-3;

  private static final double CYCLE_MINUTES = 5;

  /** A temperature and what the grain comes to. */
  private record Plan(List<Double> celsius, double metres, double oneMoreMetres) {}

  /**
   * The temperature to normalize at, drawn into the range that its steels' sheets share, but never
   * cooler than they are hardened from: the last heat of all must not be the hottest.
   */
  static double normalizeCelsius(List<SteelNow> steels, Optional<HardeningHeat> harden) {
    SteelNow highest = highest(steels);
    double celsius = roundUp(highest.upperOnHeatingC() + Margins.NORMALIZE_ABOVE, 10);
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
    double most = high;
    double least =
        harden
            .map(h -> Math.max(h.celsius(), Math.min(most, h.celsius() + ABOVE_HARDENING)))
            .orElse(0.0);
    double drawn = Math.max(low, Math.min(high, celsius));
    return Math.max(Math.max(highest.upperC() + Margins.NORMALIZE_LEAST_ABOVE, least), drawn);
  }

  /** Whether a heat lies in the ranges of all steels that count. */
  private static boolean shared(List<SteelNow> steels, double celsius) {
    return hardening(steels).stream()
        .map(s -> s.steel().heatTreatment().normalize())
        .flatMap(Optional::stream)
        .allMatch(r -> celsius >= r.lowC() - 0.5 && celsius <= r.highC() + 0.5);
  }

  /** Normalized, if it may be, and refined. */
  Course all(Refining how) {
    return how.cycles()
        .map(
            c -> {
              Course normal = c.normalized() ? normalize(c.guard(), c.fromC()) : course;
              return new Cycles(normal).refine(c);
            })
        .orElse(course);
  }

  private Course normalize(Guard guard, double celsius) {
    List<SteelNow> steels = course.steels();
    Heats heats = course.heats();
    double minutes = Math.max(5, Math.min(15, heats.size().thicknessMetres() * 1e3));
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, minutes));
    legs.addAll(heats.air(celsius));
    SteelNow highest = highest(steels);
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.NORMALIZE),
            course.open(celsius, AfterForging.hardensInAir(guard)),
            legs,
            new Task.Normalize(
                celsius,
                heats.minutesToBlack(celsius),
                highest.id(),
                highest.upperName(),
                celsius - highest.upperC(),
                drawn(steels, highest, celsius),
                guard),
            List.of(magnet(steels), course.color(celsius), Check.Look.NO_RED)),
        Structures.cooled(steels, heats, celsius, course.grainNumber(), false));
  }

  private static Task.Normalize.Draw drawn(
      List<SteelNow> steels, SteelNow highest, double celsius) {
    if (celsius == roundUp(highest.upperOnHeatingC() + Margins.NORMALIZE_ABOVE, 10)
        || !shared(steels, celsius)) {
      return Task.Normalize.Draw.NOT;
    }
    return steels.size() == 1
        ? Task.Normalize.Draw.INTO_ITS_RANGE
        : Task.Normalize.Draw.INTO_THE_RANGE_SHARED;
  }

  /** Cycles down to the hardening heat, as many as pay. */
  private Course refine(Refining.Cycling how) {
    Plan plan = plan(how);
    int n = plan.celsius().size();
    Course now = course;
    for (int i = 1; i <= n; i++) {
      StepName name = n == 1 ? StepName.only(StepKind.REFINE) : new StepName(StepKind.REFINE, i);
      now = new Cycles(now).cycle(name, how, plan);
    }
    return now;
  }

  private Course cycle(StepName name, Refining.Cycling how, Plan plan) {
    Guard guard = how.guard();
    List<SteelNow> steels = course.steels();
    Heats heats = course.heats();
    boolean first = name.number() <= 1;
    int at = Math.max(0, name.number() - 1);
    boolean end = at == plan.celsius().size() - 1;
    double celsius = plan.celsius().get(at);
    Down down = down(heats, guard, celsius, Change.of(steels));
    List<Check> checks = new ArrayList<>();
    if (end) {
      checks.add(new Check.TestPiece(how.toC()));
    } else {
      if (first && guard.slow()) {
        checks.add(magnet(steels));
      }
      checks.add(Check.Look.EVEN_COLOR);
    }
    return course.carry(
        new ScheduleStep(
            name,
            course.open(celsius, AfterForging.hardensInAir(guard)),
            legs(heats, down, celsius),
            end
                ? lastCycle(celsius, down, plan, how.below())
                : new Task.Refine(celsius, down, guard),
            checks),
        Structures.cooled(steels, heats, celsius, course.grainNumber(), down.inKiln()));
  }

  private static Down down(Heats heats, Guard guard, double celsius, Change change) {
    return heats.down(guard.slow(), change, heats.heater(celsius));
  }

  private static List<Leg> legs(Heats heats, Down down, double celsius) {
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, CYCLE_MINUTES));
    legs.addAll(heats.down(down, celsius));
    return legs;
  }

  private Plan plan(Refining.Cycling how) {
    Heats heats = course.heats();
    double last = how.toC();
    Change change = Change.of(course.steels());
    Map<Double, HeatCurve> tried = new HashMap<>();
    DoubleFunction<HeatCurve> cycle =
        celsius ->
            tried.computeIfAbsent(
                celsius, c -> Leg.curve(legs(heats, down(heats, how.guard(), c, change), c)));
    double best = course.grainMetres();
    List<Double> chosen = List.of();
    int most = how.guard().slow() ? MOST_SLOW_CYCLES : Margins.MOST_CYCLES;
    for (int n = 1; n <= most; n++) {
      List<Double> celsius = descending(how.fromC(), last, n);
      double metres = course.grainMetres();
      for (double c : celsius) {
        metres = course.grains().after(cycle.apply(c), metres);
      }
      double gain = course.grains().number(metres) - course.grains().number(best);
      if (n > 1 && gain < Margins.WORTH_A_CYCLE) {
        break;
      }
      best = metres;
      chosen = celsius;
      if (course.grains().number(metres) >= Margins.FINE_ENOUGH) {
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

  private Task lastCycle(double celsius, Down down, Plan plan, Optional<String> below) {
    double number = course.grains().number(plan.metres());
    return new Task.LastRefine(
        celsius,
        down,
        number,
        number >= Margins.FINE_ENOUGH,
        course.grains().number(plan.oneMoreMetres()) - number,
        costPct(number),
        below);
  }

  /** What each number finer takes off how deep the shallowest of its steels hardens. */
  private Optional<Double> costPct(double number) {
    SteelNow any = shallowest();
    double at = any.upperC();
    double cost =
        100
            * (1
                - any.quenched(at, QuenchedSteel.FINEST_GRAIN).idealDiameterMetres()
                    / any.quenched(at, QuenchedSteel.FINEST_GRAIN - 1).idealDiameterMetres());
    boolean hardens = Double.isFinite(cost);
    return !hardens || any.quenched(at, number).idealDiameterMetres() > DEEP_METRES
        ? Optional.empty()
        : Optional.of(cost);
  }

  private SteelNow shallowest() {
    return hardening(course.steels()).stream()
        .min(
            Comparator.comparingDouble(
                s -> s.quenched(s.upperC(), Margins.FINE_ENOUGH).idealDiameterMetres()))
        .orElseThrow();
  }

  private static Check magnet(List<SteelNow> steels) {
    return new Check.Magnet(
        steels.stream()
            .map(
                s ->
                    new Check.Magnet.Release(
                        s.id(),
                        s.lines().alwaysAustenite()
                            ? Optional.empty()
                            : Optional.of(
                                new Check.Magnet.Between(s.magnet().low(), s.magnet().high()))))
            .toList());
  }

  private static SteelNow highest(List<SteelNow> steels) {
    return hardening(steels).stream()
        .reduce((a, b) -> b.upperOnHeatingC() > a.upperOnHeatingC() ? b : a)
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
