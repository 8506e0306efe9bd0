package seamsoak.plan;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import seamsoak.data.DataFolder;
import seamsoak.reference.Inputs;
import seamsoak.safety.CautionTable;
import seamsoak.state.LineReport;
import seamsoak.state.Progress;
import seamsoak.support.Demos;
import seamsoak.support.Walks;

/** What the demo's lines do in the likely case, by the names of the reference folders. */
public final class TradeReferences {
  private static Advice unsoaked;

  private TradeReferences() {}

  /** The properties by name. */
  public static Map<String, ToDoubleFunction<Inputs>> all() {
    return Map.of("line-shows", in -> shows((int) in.get("step"), (int) in.get("after")));
  }

  /**
   * 1 where the joints that a step made show, 0 where they do not: after that step or, past the
   * last, after one of the schedule that follows without a soak.
   */
  private static double shows(int step, int after) {
    int steps = advice().history().size();
    List<LineReport> lines =
        after < steps
            ? advice().history().get(after).lines()
            : advice().schedule().after().get(after - steps).lines();
    List<LineReport> made = lines.stream().filter(l -> l.joints().made().step() == step).toList();
    if (made.isEmpty()) {
      throw new IllegalArgumentException("no joints of step " + step + " after " + after);
    }
    return made.stream().anyMatch(LineReport::visible) ? 1 : 0;
  }

  private static synchronized Advice advice() {
    if (unsoaked == null) {
      unsoaked =
          new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DataFolder.packed()), 0)
              .treat(Demos.of("mosaic"), Progress.NONE);
    }
    return unsoaked;
  }
}
