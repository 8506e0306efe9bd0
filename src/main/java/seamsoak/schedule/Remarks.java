package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.billet.Equipment;
import seamsoak.billet.Step;
import seamsoak.schedule.Remark.Outside;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.SoftLayers;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.state.SeamPlace;
import seamsoak.steel.TemperatureRange;

/**
 * What to know of a schedule as a whole.
 *
 * @param course that was carried out
 * @param steels as they are at its end
 */
record Remarks(Course course, List<SteelNow> steels) {
  /** A change too small to speak of, wt%. */
  private static final double LEAST_CLEARED_PCT = 0.005;

  /** Nearer to the end of a range than this counts as within, K. */
  private static final double ROUNDING = 0.5;

  static List<Remark> of(Treatment end) {
    Course course = end.course();
    return new Remarks(course, course.steels()).all(end.blade());
  }

  private List<Remark> all(Optional<ScheduleAdvice.Outcome> blade) {
    List<Remark> all = new ArrayList<>();
    List<Step> untold = Treated.untold(course.billet().steps());
    if (!untold.isEmpty()) {
      all.add(new Remark.PlannedAnew(untold));
    }
    blade.ifPresent(b -> cladding(b).forEach(all::add));
    deepestLine().ifPresent(all::add);
    carbonGathers().ifPresent(all::add);
    all.add(Remark.Always.NORMALIZING_HIDES_LINES);
    for (ScheduleStep step : course.planned()) {
      all.addAll(outside(step));
    }
    fires().ifPresent(all::add);
    if (steels.size() > 1) {
      all.add(new Remark.CarbonByThen(steels.stream().map(SteelNow::id).toList()));
    }
    all.add(Remark.Always.COLOR_TELLS_LITTLE);
    return List.copyOf(all);
  }

  private Stream<Remark> cladding(ScheduleAdvice.Outcome blade) {
    List<String> quenched = blade.steels().stream().map(ScheduleAdvice.Quenched::steel).toList();
    return new SoftLayers(course.billet(), steels, blade.edge(), quenched)
        .cladding().stream()
            .map(
                s ->
                    new Remark.SoftCladding(
                        s.id(),
                        blade.edge(),
                        Optional.of(s.carbonPct()).filter(c -> !s.lines().alwaysAustenite())));
  }

  /** The steel that an anneal takes most carbon from, where that is much. */
  private Optional<Remark> carbonGathers() {
    List<After> after = course.after();
    for (int i = 1; i < after.size(); i++) {
      if (after.get(i).step().kind() == StepKind.ANNEAL) {
        return gathered(after.get(i - 1), after.get(i));
      }
    }
    return Optional.empty();
  }

  private Optional<Remark> gathered(After before, After after) {
    ToDoubleFunction<String> gain = s -> carbon(after, s) - carbon(before, s);
    List<String> ids = steels.stream().map(SteelNow::id).toList();
    String from = ids.stream().min(Comparator.comparingDouble(gain)).orElseThrow();
    String into = ids.stream().max(Comparator.comparingDouble(gain)).orElseThrow();
    return gain.applyAsDouble(from) < -Remark.CarbonGathers.MUCH_PCT
        ? Optional.of(
            new Remark.CarbonGathers(
                after.step(),
                from,
                carbon(before, from),
                carbon(after, from),
                into,
                carbon(after, into),
                course.after().stream()
                    .filter(a -> a.step().kind() == StepKind.HARDEN)
                    .findFirst()
                    .map(a -> carbon(a, from))))
        : Optional.empty();
  }

  private static double carbon(After after, String steel) {
    return after.layers().stream()
        .filter(l -> l.steel().equals(steel))
        .findFirst()
        .orElseThrow()
        .meanPct();
  }

  /** The ranges that a sheet prints for a step; a second temper repeats the first. */
  private static List<TemperatureRange> ranges(ScheduleStep step, SteelNow s) {
    return step.name().number() > 1 ? List.of() : step.kind().published(s.steel().heatTreatment());
  }

  private static boolean holds(TemperatureRange r, double at) {
    return at > r.lowC() - ROUNDING && at < r.highC() + ROUNDING;
  }

  /** Where a step lies outside what the sheets of its steels print. */
  private List<Remark> outside(ScheduleStep step) {
    return step.hold().map(Leg::toC).stream()
        .flatMap(at -> steels.stream().flatMap(s -> outside(step, at, s).stream()))
        .toList();
  }

  private Optional<Remark> outside(ScheduleStep step, double at, SteelNow s) {
    List<TemperatureRange> ranges = ranges(step, s);
    Optional<TemperatureRange> left =
        ranges.stream().filter(r -> ranges.stream().noneMatch(x -> holds(x, at))).findFirst();
    return left.map(
        r -> {
          Optional<Outside> own = why(step, at, s, r);
          List<String> within = own.isPresent() ? List.of() : within(step, at);
          Outside why = own.orElse(within.isEmpty() ? Outside.CARBON_MOVED : Outside.WITHIN_OTHERS);
          return new Remark.OutsideRange(step.name(), at, s.id(), r, why, within);
        });
  }

  /** Why, unless the ranges of the others tell. */
  private Optional<Outside> why(ScheduleStep step, double at, SteelNow s, TemperatureRange range) {
    if (!s.hardens()) {
      return Optional.of(Outside.OTHERS_DECIDE);
    }
    if (step.kind() == StepKind.HARDEN && s.ownHeat()) {
      return Optional.of(Outside.HEAT_OF_OTHERS);
    }
    if (Math.abs(at - Math.max(range.lowC(), Math.min(range.highC(), at))) < HardeningHeat.NEAR) {
      return Optional.of(Outside.NEAR_ENOUGH);
    }
    if (step.kind() == StepKind.TEMPER) {
      return Optional.of(Outside.HARDNESS_WANTED);
    }
    if (step.task() instanceof Task.SubCriticalAnneal) {
      return Optional.of(
          range.highC() > s.ac1C() ? Outside.BELOW_FIRST_CHANGE : Outside.ANOTHER_CHANGES);
    }
    return step.task() instanceof Task.Spheroidize
        ? Optional.of(Outside.CARBIDE_TO_GATHER)
        : Optional.empty();
  }

  private List<String> within(ScheduleStep step, double at) {
    return steels.stream()
        .filter(SteelNow::hardens)
        .filter(o -> ranges(step, o).stream().anyMatch(r -> holds(r, at)))
        .map(SteelNow::id)
        .toList();
  }

  /** What the fires of the shop cannot do. */
  private Optional<Remark> fires() {
    Equipment has = course.billet().equipment();
    Optional<Heater> other =
        has.forgeTaken() != Equipment.Forge.NONE
            ? Optional.of(Heater.FORGE)
            : Optional.of(Heater.SALT).filter(f -> has.saltTaken() != Equipment.Salt.NONE);
    boolean kiln = has.kilnTaken().there();
    if (!kiln && other.isPresent()) {
      return Optional.of(Remark.Always.HOLDS_WITHOUT_KILN);
    }
    double highest = kiln ? has.kilnTaken().highestTaken().celsius() : 0;
    List<StepName> over =
        course.planned().stream()
            .filter(s -> s.hold().isPresent() && s.hottestC() > highest + ROUNDING)
            .filter(s -> s.in() != Heater.OVEN)
            .map(ScheduleStep::name)
            .toList();
    return over.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Remark.BeyondKiln(kiln ? Optional.of(highest) : Optional.empty(), over, other));
  }

  /** What the soak and what the cycles do for the deepest line, so that nobody soaks twice. */
  private Optional<Remark> deepestLine() {
    double before = SeamPlace.deepestPct(SeamPlace.of(course.start()));
    if (before <= 0) {
      return Optional.empty();
    }
    List<After> after = course.after();
    Optional<Double> soaked =
        after.stream()
            .filter(a -> a.step().kind() == StepKind.SOAK)
            .findFirst()
            .map(After::deepestMissingPct);
    double end =
        after.stream()
            .filter(
                a -> a.step().kind() == StepKind.REFINE || a.step().kind() == StepKind.NORMALIZE)
            .reduce((a, b) -> b)
            .map(After::deepestMissingPct)
            .orElse(soaked.orElse(before));
    return Optional.of(
        before - end > LEAST_CLEARED_PCT
            ? new Remark.LineClears(before, soaked, end)
            : new Remark.LineStays(before));
  }
}
