package seamsoak.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Step;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Down;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/**
 * Steps of a schedule as a billet file has them, to be appended to it once the first of them is
 * done. Those of one kind that follow each other are one step with several heats.
 *
 * @param units of the values
 */
record FileStep(Billet billet, ScheduleAdvice schedule, UnitSystem units) {
  /** The kind that the file knows it by; nothing for what it has no word for. */
  static Optional<Step.Kind> kind(StepKind kind) {
    return switch (kind) {
      case COOL_DOWN -> Optional.of(Step.Kind.COOL);
      case SOAK -> Optional.of(Step.Kind.SOAK);
      case NORMALIZE -> Optional.of(Step.Kind.NORMALIZE);
      case REFINE -> Optional.of(Step.Kind.REFINE);
      case ANNEAL -> Optional.of(Step.Kind.ANNEAL);
      case GRIND -> Optional.of(Step.Kind.GRIND);
      case STRESS_RELIEF -> Optional.of(Step.Kind.RELIEVE);
      case HARDEN -> Optional.of(Step.Kind.HARDEN);
      case TEMPER -> Optional.of(Step.Kind.TEMPER);
      case TEST_ETCH, PRE_HEAT, SUB_ZERO -> Optional.empty();
    };
  }

  /** As it is written. */
  Map<String, Object> of(List<ScheduleAdvice.Step> alike) {
    ScheduleAdvice.Step first = alike.get(0);
    Step.Kind kind = kind(first.step().kind()).orElseThrow();
    Map<String, Object> step = new LinkedHashMap<>();
    step.put("do", kind.word());
    if (kind == Step.Kind.COOL) {
      step.put("in", first.task() instanceof Task.CoolSlowly ? "furnace" : "air");
    } else if (first.task() instanceof Task.Grind grind) {
      step.put("depth", new Length(grind.depthMetres()).format(units));
    } else {
      step.put("heats", alike.stream().map(this::heat).toList());
    }
    if (kind == Step.Kind.HARDEN) {
      schedule.blade().ifPresent(b -> step.put("in", b.quenchant()));
    }
    if (kind == Step.Kind.SOAK) {
      step.put("outside", billet.soak().outsideTaken().name().toLowerCase(Locale.ROOT));
    }
    return step;
  }

  private Map<String, Object> heat(ScheduleAdvice.Step step) {
    Map<String, Object> heat = new LinkedHashMap<>();
    heat.put("at", Temperature.ofCelsius(step.temperatureC().orElseThrow()).format(units));
    heat.put("for", TimeSpan.ofMinutes(step.holdMinutes().orElse(0.0)).format(units));
    cool(step.task()).ifPresent(c -> heat.put("cool", c));
    return heat;
  }

  /** How it comes down, where that is not what is usual for its kind. */
  private static Optional<String> cool(Task task) {
    Optional<Down> down =
        task instanceof Task.Soak s
            ? Optional.of(s.down())
            : task instanceof Task.Refine r
                ? Optional.of(r.down())
                : task instanceof Task.LastRefine l ? Optional.of(l.down()) : Optional.empty();
    if (task instanceof Task.SubCriticalAnneal anneal && !anneal.buried()) {
      return Optional.of("air");
    }
    return down.filter(d -> d.way() != Down.Way.STILL_AIR).map(d -> "furnace");
  }

  /** Each kind that follows itself, together. */
  static List<List<ScheduleAdvice.Step>> alike(List<ScheduleAdvice.Step> steps) {
    List<List<ScheduleAdvice.Step>> all = new ArrayList<>();
    for (ScheduleAdvice.Step step : steps) {
      List<ScheduleAdvice.Step> last = all.isEmpty() ? List.of() : all.get(all.size() - 1);
      if (!last.isEmpty() && last.get(0).step().kind() == step.step().kind()) {
        last.add(step);
      } else {
        all.add(new ArrayList<>(List.of(step)));
      }
    }
    return all;
  }
}
