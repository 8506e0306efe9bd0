package seamsoak.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.Stage;
import seamsoak.state.HeatRisk;
import seamsoak.state.Preform;
import seamsoak.state.StageReport;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** What is said of a billet after a step. */
public final class StageWords {
  private StageWords() {}

  /** Number and kind of its step, such as {@code 4 restack}. */
  public static String name(StageReport stage) {
    return stage.step() + " " + stage.kind();
  }

  /** What becomes of what. */
  public static String made(List<StageReport> history, UnitSystem units) {
    int steps = history.size() - 1;
    return "It can be made as written: in "
        + (steps == 1 ? "1 step" : steps + " steps")
        + " a stack of "
        + size(history.get(0), units)
        + " becomes "
        + size(history.get(steps), units)
        + ".";
  }

  /** What a stack is of, and its size. */
  public static String stack(List<String> steels, StageReport stack, UnitSystem units) {
    return String.join(", ", steels) + "; " + size(stack, units);
  }

  /** Thick, wide and long, as stock is called for. */
  private static String size(StageReport stage, UnitSystem units) {
    return Length.ofMillimetres(stage.thicknessMm()).format(units)
        + " by "
        + Length.ofMillimetres(stage.widthMm()).format(units)
        + " by "
        + Length.ofMillimetres(stage.lengthMm()).format(units);
  }

  /** All that was remarked on the steps so far. */
  public static List<String> remarks(List<StageReport> history) {
    return history.stream()
        .flatMap(s -> s.remarks().stream().map(r -> "step " + name(s) + ": " + remark(r)))
        .toList();
  }

  /** What is the matter with heats, or only with grave ones; steps that share it go together. */
  public static List<String> heats(List<StageReport> history, boolean grave, UnitSystem units) {
    Map<HeatRisk, List<String>> where = new LinkedHashMap<>();
    for (StageReport stage : history) {
      for (HeatRisk risk : stage.heats()) {
        // a heat that is refused has been told of by then
        if (!risk.isRefused() && risk.kind().isGrave() == grave) {
          where.computeIfAbsent(risk, k -> new ArrayList<>()).add(name(stage));
        }
      }
    }
    List<String> all = new ArrayList<>();
    where.forEach(
        (risk, steps) -> all.add("step " + String.join(", ", steps) + ": " + heat(risk, units)));
    return all;
  }

  /** What is the matter with a heat. */
  public static String heat(HeatRisk risk, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    String at = amounts.heat(risk.celsius());
    String limit = amounts.heat(risk.limitC());
    if (risk.done()) {
      return done(risk, at, limit);
    }
    return switch (risk.kind()) {
      case MELTS -> at + " is above " + limit + ", where " + risk.steel() + " is about to melt";
      case NO_WELD -> at + " is far below the " + limit + " from which steel welds";
      case MAY_BURN ->
          at
              + " is above the "
              + limit
              + " from which "
              + risk.steel()
              + " may burn, by a handbook; smiths weld clean steel there, so keep it short and stop"
              + " at the first spark";
      case NO_TEMPER ->
          at
              + " is above the "
              + limit
              + " from which "
              + risk.steel()
              + " begins to change: that is no temper, and undoes the hardening";
      case COARSENS ->
          at
              + " is above the "
              + limit
              + " that no heat treatment of "
              + risk.steel()
              + " passes: its grain coarsens";
      case COLD_TO_WELD ->
          at
              + " is below the "
              + limit
              + " from which steel welds readily: a seam may look shut and open later";
      case COLD_TO_FORGE ->
          at
              + " is below the "
              + limit
              + " at which "
              + risk.steel()
              + " should no longer be forged: it may crack, or tear at the seams";
      case ABOVE_FORGING ->
          at
              + " is above the "
              + limit
              + " from which "
              + risk.steel()
              + " is forged: its grain coarsens, so forge it on as it cools, and watch its corners";
    };
  }

  /** What it did to the metal, and what to do now. */
  private static String done(HeatRisk risk, String at, String limit) {
    String above = at + " was above " + limit;
    String changes = " from which " + risk.steel();
    String grown = ": its grain has grown, which normalizing and cycles mend; ";
    return switch (risk.kind()) {
      case MELTS ->
          above
              + ", where "
              + risk.steel()
              + " is about to melt: it is likely burnt along its grains, which no heat treatment"
              + " mends. Look for crumbling corners and cracks, break off an end and look for a"
              + " coarse, glittering face: cut back to sound metal, or begin anew (common practice,"
              + " no source)";
      case MAY_BURN ->
          above
              + changes
              + " may burn, by a handbook"
              + grown
              + "if it threw sparks or its corners crumble, cut back to sound metal";
      case ABOVE_FORGING -> above + changes + " is forged" + grown + "look at its corners";
      case NO_TEMPER ->
          above + changes + " begins to change: it has undone the hardening, so harden it anew";
      case COARSENS ->
          above
              + ", more than any treatment of "
              + risk.steel()
              + grown
              + "cycle it before it is hardened";
      case NO_WELD ->
          at
              + " was far below the "
              + limit
              + " from which steel welds: take its seams for open, and weld them anew, clean and"
              + " fluxed, before anything else is done to them";
      case COLD_TO_WELD ->
          at + " was below the " + limit + " of a weld: look for seams that look shut and are not";
      case COLD_TO_FORGE ->
          at
              + " was below the "
              + limit
              + " where forging ends: look for cracks, and for seams that tore";
    };
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
    if (remark instanceof Stage.Twisted t) {
      return "twisted: what lies apart comes closer, to "
          + Amounts.number(100 * t.atHalfRadius(), 0)
          + " % half-way to the face, to "
          + Amounts.number(100 * t.atFullRadius(), 0)
          + " % at it";
    }
    return "the jacket is scaled away: the body below is bare";
  }
}
