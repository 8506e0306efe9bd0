package seamsoak.plan;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Default;
import seamsoak.safety.Stop;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.soak.SoakAdvice;
import seamsoak.source.Caution;
import seamsoak.state.Preform;
import seamsoak.state.SeamProfile;
import seamsoak.state.StageReport;
import seamsoak.state.WorkReport;

/**
 * Everything that is said about a billet. The names of this tree are the output contract.
 *
 * @param billet its name
 * @param steels of its stack, each once, in the order of their layers
 * @param defaults what was assumed because the file does not say it
 * @param work what was done so far, where the file says it
 * @param history the billet after each step
 * @param preform the bar that would have left the cells square, for a billet of tiles
 * @param soak the soak
 * @param schedule the schedule after it
 * @param seam carbon across the worst seam at each stage
 * @param faces the shown face as it is, after the soak and in the finished blade; none where it
 *     cannot be drawn
 * @param hardStops why the work must not be done as written, empty if it may
 * @param cautions that always apply
 */
public record Advice(
    String billet,
    List<String> steels,
    List<Default> defaults,
    Optional<WorkReport> work,
    List<StageReport> history,
    Optional<Preform> preform,
    SoakAdvice soak,
    ScheduleAdvice schedule,
    Optional<SeamProfile> seam,
    List<FaceAdvice> faces,
    List<Stop> hardStops,
    List<Caution> cautions) {

  /** Whether the lines clear and nothing stands in the way. */
  public boolean goesAhead() {
    return hardStops.isEmpty() && soak.clears();
  }
}
