package seamsoak.words;

import java.util.List;
import seamsoak.billet.Stage;
import seamsoak.state.Preform;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;

/** What is said of a billet after a step. */
public final class StageWords {
  private StageWords() {}

  /** Number and kind of its step, such as {@code 4 restack}. */
  public static String name(StageReport stage) {
    return stage.step() + " " + stage.kind();
  }

  /** All that was remarked on the steps so far. */
  public static List<String> remarks(List<StageReport> history) {
    return history.stream()
        .flatMap(s -> s.remarks().stream().map(r -> "step " + name(s) + ": " + remark(r)))
        .toList();
  }

  /** The bar that would have left the cells square. */
  public static String preform(Preform p, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    return ("The tiles' cells are %s times as long as they are wide by now. To end up square, forge"
            + " the bar %s thick by %s wide before cutting; %d tiles take %s of it.")
        .formatted(
            Amounts.percent(p.aspectNow()),
            amounts.millimetres(p.thicknessMm()),
            amounts.millimetres(p.widthMm()),
            p.tiles(),
            amounts.millimetres(p.barLengthMm()));
  }

  public static String remark(Stage.Remark remark) {
    return switch (remark) {
      case JACKET_SCALED_AWAY -> "the jacket is scaled away: the body below is bare";
    };
  }
}
