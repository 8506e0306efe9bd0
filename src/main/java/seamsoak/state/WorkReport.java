package seamsoak.state;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Now;
import seamsoak.billet.Step;

/**
 * How far the work has come, for a billet whose file says what was done.
 *
 * @param now where it stands
 * @param done all that counts as done
 * @param left the steps of the file that are still to do, the one under way first
 * @param metal the billet as it is now
 */
public record WorkReport(Now now, List<Now.Done> done, List<Step> left, StageReport metal) {
  public WorkReport {
    done = List.copyOf(done);
    left = List.copyOf(left);
  }

  /** The soaks among what was done, since the metal was last forged. */
  public Optional<Soaked> soaked() {
    return Soaked.of(done);
  }

  /** Empty where nothing is said to be done. */
  public static Optional<WorkReport> of(List<Step> steps, StageReport metal) {
    return Now.of(steps).map(now -> new WorkReport(now, now.done(steps), now.left(steps), metal));
  }
}
