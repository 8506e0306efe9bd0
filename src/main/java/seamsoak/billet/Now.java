package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How far the work has come: to the last thing that the file says was done.
 *
 * @param step in which that is
 * @param heats how many of its stays in the fire are done; 0 for work at the bench
 * @param stepDone whether nothing of the step is left
 */
public record Now(Step step, int heats, boolean stepDone) {
  /**
   * Something that counts as done.
   *
   * @param step whose it is
   * @param heat which of its stays in the fire, from 1; 0 for work at the bench
   * @param planned of the heat; empty for work at the bench
   * @param done what the file says of it; empty where it counts as done as planned
   */
  public record Done(Step step, int heat, Optional<Heat> planned, Optional<HeatDone> done) {
    /** Whether the file says so, or whether it follows from something later that was done. */
    public boolean stated() {
      return done.isPresent() || step.mark().done().isPresent();
    }
  }

  /** Empty where nothing was done: then all of the file is history. */
  public static Optional<Now> of(List<Step> steps) {
    for (int i = steps.size() - 1; i >= 0; i--) {
      Step step = steps.get(i);
      int done = step.mark().done().isPresent() ? step.times() : heatsDone(step);
      if (done > 0 || step.mark().done().isPresent()) {
        return Optional.of(new Now(step, done, done == step.times()));
      }
    }
    return Optional.empty();
  }

  /** How many of its stays in the fire are done: all up to the last that is said to be. */
  private static int heatsDone(Step step) {
    int before = 0;
    int done = 0;
    for (Heat heat : step.heats()) {
      if (!heat.done().isEmpty()) {
        done = before + heat.done().size();
      }
      before += heat.times();
    }
    return done;
  }

  /** The steps that are still to do, the one under way first. */
  public List<Step> left(List<Step> steps) {
    return steps.subList(step.mark().number() - (stepDone ? 0 : 1), steps.size());
  }

  /** All that counts as done, in its order. */
  public List<Done> done(List<Step> steps) {
    return steps.subList(0, step.mark().number()).stream()
        .flatMap(s -> doneOf(s).stream())
        .toList();
  }

  private List<Done> doneOf(Step s) {
    if (s.heats().isEmpty()) {
      return List.of(new Done(s, 0, Optional.empty(), Optional.empty()));
    }
    List<Done> all = new ArrayList<>();
    for (Heat heat : s.heats()) {
      IntStream.range(0, heat.times())
          .forEach(
              i ->
                  all.add(
                      new Done(
                          s,
                          all.size() + 1,
                          Optional.of(heat),
                          i < heat.done().size()
                              ? Optional.of(heat.done().get(i))
                              : Optional.empty())));
    }
    return s == step ? List.copyOf(all.subList(0, heats)) : List.copyOf(all);
  }
}
