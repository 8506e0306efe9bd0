package seamsoak.kiln;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import seamsoak.billet.Billet;
import seamsoak.property.hardening.HollomonJaffe1945;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.StepName;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Conflict;
import seamsoak.soak.SoakAdvice;
import seamsoak.steel.TemperatureRange;

/**
 * What one billet wants of the kiln, by its own schedule.
 *
 * @param number of the billet, from 0
 * @param growth what its steps lose by lasting longer
 * @param law by which a longer hold makes up for a cooler one
 */
record Wishes(
    int number,
    Billet billet,
    SoakAdvice soak,
    ScheduleAdvice schedule,
    Growth growth,
    HollomonJaffe1945 law) {
  Windows windows() {
    return new Windows(billet, schedule);
  }

  List<Wish> all() {
    List<Wish> all = new ArrayList<>();
    for (ScheduleAdvice.Step step : schedule.steps()) {
      if (step.in() == Heater.KILN
          && step.temperatureC().isPresent()
          && step.step().kind() != StepKind.COOL_DOWN) {
        all.add(wish(step));
      }
    }
    return all;
  }

  /** Kinds of steps that are left to do, in their order. */
  List<StepKind> left() {
    return schedule.steps().stream().map(s -> s.step().kind()).toList();
  }

  /** Kinds of steps that it has done elsewhere than in the kiln. */
  List<StepKind> elsewhere() {
    return schedule.steps().stream()
        .filter(s -> s.in() != Heater.KILN && s.in() != Heater.BENCH)
        .map(s -> s.step().kind())
        .distinct()
        .toList();
  }

  /** Where its own sheet hardens what no formula reaches, and nothing else of it is hardened. */
  Optional<Load.Window> bySheet() {
    return schedule.blade().isPresent()
        ? Optional.empty()
        : schedule.conflicts().stream()
            .filter(Conflict.BeyondFormulas.class::isInstance)
            .flatMap(c -> ((Conflict.BeyondFormulas) c).sheet().harden().stream())
            .map(r -> new Load.Window(number, r.lowC(), r.highC(), r.middleC()))
            .findFirst();
  }

  /** Whether it goes from the anvil into the kiln. */
  boolean fromTheAnvil() {
    return schedule.steps().stream()
        .anyMatch(s -> s.in() == Heater.KILN && s.step().kind() == StepKind.COOL_DOWN);
  }

  private Wish wish(ScheduleAdvice.Step step) {
    double planned = step.temperatureC().orElseThrow();
    double minutes = step.holdMinutes().orElse(0.0);
    int fromEnd = fromEnd(step.step());
    Hold hold = hold(step.task(), planned, minutes);
    Windows windows = windows();
    TemperatureRange range =
        switch (step.step().kind()) {
          case SOAK -> soaks((Hold.Soaking) hold);
          case NORMALIZE -> windows.normalize(planned);
          case REFINE -> windows.refine(planned, fromEnd, step.task());
          case ANNEAL -> windows.anneal(planned, hold);
          case STRESS_RELIEF -> Windows.below(planned, hold);
          case PRE_HEAT -> Windows.preHeat(planned);
          case HARDEN -> windows.harden(planned);
          case TEMPER -> windows.temper(planned);
          case COOL_DOWN, GRIND, TEST_ETCH, SUB_ZERO -> new TemperatureRange(planned, planned);
        };
    double rise = minutes(step.step(), Segment.Kind.RISE);
    return new Wish(
        number,
        step.step(),
        fromEnd,
        planned,
        Math.min(planned, range.lowC()),
        Math.max(planned, range.highC()),
        hold,
        growth.most(step.step(), rise),
        rise,
        then(step.step()));
  }

  private int fromEnd(StepName name) {
    List<StepName> alike =
        schedule.steps().stream()
            .map(ScheduleAdvice.Step::step)
            .filter(s -> s.kind() == name.kind())
            .toList();
    return alike.size() - 1 - alike.indexOf(name);
  }

  private Hold hold(Task task, double planned, double minutes) {
    return task instanceof Task.Soak
        ? soaking(planned, minutes)
        : task instanceof Task.SubCriticalAnneal || task instanceof Task.StressRelief
            ? new Hold.Same(law, planned, minutes)
            : new Hold.Fixed(minutes);
  }

  /** What the soak's own options need, by the measure that the one taken was chosen by. */
  private Hold soaking(double planned, double minutes) {
    NavigableMap<Double, Double> all = new TreeMap<>();
    Optional<SoakAdvice.Recommended> taken = soak.recommended();
    for (SoakAdvice.SoakOption o : soak.options()) {
      Optional<Double> needs =
          switch (taken.map(t -> t.reason().kind()).orElseThrow()) {
            case BALANCED_BY_HISTORIES -> o.minutesHigh();
            case BALANCED_BY_MIDDLE, BALANCED_BY_LIKELY -> o.minutes();
            default -> Optional.empty();
          };
      if (o.clears() && o.remarks().isEmpty()) {
        needs
            .map(Math::ceil)
            .filter(m -> m > 0 && m <= soak.mostMinutes())
            .ifPresent(m -> all.put(o.temperatureC(), m));
      }
    }
    all.put(planned, minutes);
    return new Hold.Soaking(all);
  }

  private static TemperatureRange soaks(Hold.Soaking soaking) {
    return new TemperatureRange(soaking.byCelsius().firstKey(), soaking.byCelsius().lastKey());
  }

  private double minutes(StepName step, Segment.Kind kind) {
    return segments(step).stream()
        .filter(s -> s.kind() == kind)
        .mapToDouble(Segment::minutes)
        .sum();
  }

  private List<Segment> segments(StepName step) {
    return schedule.segments().stream().filter(s -> s.step().equals(step)).toList();
  }

  private Wish.Then then(StepName step) {
    if (step.kind() == StepKind.PRE_HEAT) {
      return new Wish.Then.Stay();
    }
    if (step.kind() == StepKind.HARDEN) {
      return new Wish.Then.Quench(
          schedule.blade().map(ScheduleAdvice.Outcome::quenchantName).orElse(""), bathC());
    }
    List<Segment> falls =
        segments(step).stream()
            .filter(s -> s.cool().equals(Optional.of(Coolant.Plain.KILN)))
            .toList();
    return falls.stream()
        .filter(s -> s.fromC() > s.toC() + 1)
        .findFirst()
        .<Wish.Then>map(
            s ->
                new Wish.Then.Fall(
                    s.toC(),
                    (s.fromC() - s.toC()) / (s.minutes() / 60),
                    falls.stream()
                        .filter(f -> Math.abs(f.fromC() - f.toC()) <= 1)
                        .mapToDouble(Segment::minutes)
                        .sum()))
        .orElse(new Wish.Then.Air());
  }

  private Optional<Double> bathC() {
    return schedule.steps().stream()
        .map(ScheduleAdvice.Step::task)
        .filter(Task.Harden.class::isInstance)
        .map(t -> ((Task.Harden) t).bathC())
        .findFirst();
  }
}
