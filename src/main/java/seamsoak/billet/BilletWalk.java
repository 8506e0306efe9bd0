package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.carbon.Line;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.data.Mistake;
import seamsoak.unit.UnitSystem;

/**
 * Walks a billet through its steps: a fold that carries size and carbon from one to the next. Steps
 * that cannot be done are refused with a {@link Fault} at their place.
 */
public final class BilletWalk {
  /** With less missing a line shows in no state, and inside the metal it only fades, wt%. */
  private static final double GONE_PCT = 0.02;

  /** Each turning of every other piece doubles them; shops stop at some dozens. */
  private static final int MOST_LINES = 1000;

  private final Shop shop;
  private final boolean linesOnly;

  public BilletWalk(Shop shop) {
    this(shop, false);
  }

  private BilletWalk(Shop shop, boolean linesOnly) {
    this.shop = shop;
    this.linesOnly = linesOnly;
  }

  /**
   * A walk that follows no more than the lines need: the layers are left out once the lines between
   * them are well below what shows, since inside the metal a line only fades. What lines still show
   * come out as in a full walk.
   */
  public static BilletWalk ofLines(Shop shop) {
    return new BilletWalk(shop, true);
  }

  /** The billet as laid and after each step. */
  public List<Stage> walk(Billet billet) {
    Faults faults = new Faults();
    List<Stage> stages = walk(billet, faults);
    faults.throwAny();
    return stages;
  }

  /** The same up to a step that cannot be done, which is told to the faults. */
  public List<Stage> walk(Billet billet, Faults faults) {
    List<Stage> stages = new ArrayList<>();
    Optional<Now> now = Now.of(billet.steps());
    Workpiece laid = new Laying(shop).of(billet.stack());
    stages.add(
        new Stage(0, "stack", laid, Optional.empty(), Shop.BLACK_KELVIN, 0, 0, List.of(), laid));
    for (Step step : billet.steps()) {
      Stage before = stages.get(stages.size() - 1);
      try {
        Stage after = after(step, before, billet, turns(now, step));
        stages.add(linesOnly ? after.withPiece(forLines(after.piece())) : after);
      } catch (CannotBeDone e) {
        faults.add(cannotBeDone(step, e.getMessage(), e.instead()));
        break;
      } catch (IllegalArgumentException e) {
        faults.add(
            cannotBeDone(
                step, e.getMessage(), "take less off, heat it less, or begin with more metal"));
        break;
      }
    }
    return List.copyOf(stages);
  }

  private static Fault cannotBeDone(Step step, String why, String instead) {
    return new Fault(
        List.of(
            new Mistake(
                step.place(),
                "steps[" + (step.mark().number() - 1) + "]",
                step.title() + " cannot be done: " + why,
                instead)));
  }

  private Workpiece forLines(Workpiece piece) {
    return piece.withInner(
        all ->
            all.stream().filter(l -> l.kind() != SectionLine.Kind.LAYERS || mayShow(l)).toList());
  }

  private static boolean mayShow(SectionLine layers) {
    return layers.parts().size() > 1
        || layers.near() == SectionLine.End.GAP
        || layers.strip().planes().stream()
            .anyMatch(p -> Line.of(layers.strip(), p).depthPct() >= GONE_PCT);
  }

  /** After how many of its heats work stands in a step; 0 where it does not stand there. */
  private static int turns(Optional<Now> now, Step step) {
    return now.filter(n -> n.step() == step).map(Now::heats).orElse(0);
  }

  private Stage after(Step step, Stage before, Billet billet, int turns) {
    UnitSystem units = billet.stack().units();
    Workpiece piece = before.piece();
    if (piece.hasLooseFaces() && step.kind() != Step.Kind.WELD) {
      throw new CannotBeDone("the new faces must be welded first", "put a weld step before it");
    }
    StepWork work = new StepWork(shop, before, units, billet.equipment(), turns);
    work.carryOut(step);
    work.piece().size().requireBillet(units);
    if (work.piece().inner().size() > MOST_LINES) {
      throw new CannotBeDone(
          "there would be more than " + MOST_LINES + " kinds of seams", "restack fewer times");
    }
    return work.stage(step);
  }
}
