package seamsoak.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.unit.UnitSystem;

/** Something that is still to be done: first what the file plans, then what is advised after it. */
public sealed interface ToDo {
  /**
   * A step of the file.
   *
   * @param heat which of its stays in the fire comes next, from 1; 0 for work at the bench
   */
  record OfFile(Step step, int heat) implements ToDo {}

  /**
   * Steps of the schedule that follow each other and are of one kind.
   *
   * @param steps at least one
   * @param written as the file has it; empty where the file has no word for it
   */
  record Advised(List<ScheduleAdvice.Step> steps, Optional<Map<String, Object>> written)
      implements ToDo {
    public ScheduleAdvice.Step first() {
      return steps.get(0);
    }

    /** Whether it is only to be looked at. */
    public boolean isTestEtch() {
      return first().step().kind() == StepKind.TEST_ETCH;
    }
  }

  /** Whether it can be recorded that it was done. */
  default boolean canBeRecorded() {
    return !(this instanceof Advised a) || a.written().isPresent();
  }

  /** Whether the file says how far the work has come. */
  static boolean isBegun(Billet billet) {
    return Now.of(billet.steps()).isPresent();
  }

  /**
   * All of it in order. A file that says of nothing that it was done plans all of its steps.
   *
   * @param advised nothing while it is not known
   * @param units that what is advised is written in
   */
  static List<ToDo> of(Billet billet, Optional<Advice> advised, UnitSystem units) {
    List<ToDo> all = new ArrayList<>();
    Optional<Now> now = Now.of(billet.steps());
    for (Step step : now.map(n -> n.left(billet.steps())).orElse(billet.steps())) {
      int done = now.filter(n -> n.step() == step).map(Now::heats).orElse(0);
      all.add(new OfFile(step, step.heats().isEmpty() ? 0 : done + 1));
    }
    advised
        .map(Advice::schedule)
        .ifPresent(
            schedule -> {
              FileStep file = new FileStep(billet, schedule, units);
              for (List<ScheduleAdvice.Step> alike : FileStep.alike(schedule.steps())) {
                Optional<Map<String, Object>> written =
                    FileStep.kind(alike.get(0).step().kind()).map(k -> file.of(alike));
                all.add(new Advised(List.copyOf(alike), written));
              }
            });
    return List.copyOf(all);
  }
}
