package seamsoak.soak;

import java.util.List;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.state.AsCooled;
import seamsoak.state.EtchBand;

/**
 * What the smith saw at the seams.
 *
 * @param all of them in the order of the steps
 */
public record Sightings(List<Sighting> all) {
  /**
   * One look.
   *
   * @param step after which
   * @param seen what was seen
   */
  public record Sighting(Step step, Seen seen) {}

  public static Sightings of(Billet billet) {
    return new Sightings(
        billet.steps().stream()
            .flatMap(s -> s.mark().seen().stream().map(seen -> new Sighting(s, seen)))
            .toList());
  }

  public boolean none() {
    return all.isEmpty();
  }

  /**
   * Each with what shows in the state that it was etched in.
   *
   * @param stages of the usual history
   */
  List<Looking> looks(List<Stage> stages, AsCooled asCooled, ToCome toCome) {
    return all.stream()
        .map(
            s -> {
              Stage stage = stages.get(s.step().mark().number());
              Seen.Etched left = left(s.step());
              Seen.Etched state = s.seen().etched().orElse(left);
              EtchBand etch =
                  state == left
                      ? asCooled.after(stage)
                      : switch (state) {
                        case AS_COOLED -> toCome.asCooled();
                        case ANNEALED -> toCome.annealed();
                        case HARDENED -> toCome.finished();
                      };
              return new Looking(
                  s.seen(), stage.step(), stage.step() == stages.size() - 1, state, etch);
            })
        .toList();
  }

  /** The state in which a step leaves the steel. */
  public static Seen.Etched left(Step step) {
    return switch (step.kind()) {
      case HARDEN, TEMPER -> Seen.Etched.HARDENED;
      case ANNEAL -> Seen.Etched.ANNEALED;
      case WELD,
          DRAW,
          PRESS,
          ROLL,
          GRIND,
          RESTACK,
          TILE,
          UNJACKET,
          TWIST,
          SOAK,
          NORMALIZE,
          REFINE,
          RELIEVE,
          COOL ->
          Seen.Etched.AS_COOLED;
    };
  }
}
