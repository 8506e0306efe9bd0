package seamsoak.soak;

import java.util.List;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.SeamName;
import seamsoak.state.SeamPlace;

/**
 * What the smith saw at the seams, held against a possible history.
 *
 * @param steps the steps after which something was seen
 */
public record Sightings(List<Step> steps) {
  /** A width read off the face agrees within this share of it, or this many metres; judgement. */
  private static final double WIDTH_SHARE = 0.3;

  private static final double WIDTH_METRES = 0.15e-3;

  /** A line this much finer than any carbon line can be is something else and says nothing. */
  private static final double CLEARLY_FINER = 0.5;

  public static Sightings of(Billet billet) {
    return new Sightings(billet.steps().stream().filter(s -> s.mark().seen().isPresent()).toList());
  }

  /** Without those whose line is too fine to be missing carbon, judged by a full walk. */
  public Sightings ofCarbon(List<Stage> stages) {
    return new Sightings(steps.stream().filter(s -> !tooFine(s, stages)).toList());
  }

  private static boolean tooFine(Step step, List<Stage> stages) {
    Seen seen = step.mark().seen().orElseThrow();
    Workpiece piece = stages.get(step.mark().number()).piece();
    return seen.width().isPresent()
        && SeamPlace.of(piece, LineVisibility.USUAL).stream()
            .filter(p -> isMeant(seen, p))
            .mapToDouble(p -> p.narrowestMetres() * p.trace())
            .min()
            .stream()
            .anyMatch(least -> isTooFine(seen.width().get().metres(), least));
  }

  /** Whether a line is too fine to be missing carbon, both widths in one unit. */
  static boolean isTooFine(double seen, double least) {
    return seen < CLEARLY_FINER * least;
  }

  public boolean none() {
    return steps.isEmpty();
  }

  /** For each sighting, whether a walk would have shown it. */
  public List<Boolean> agree(List<Stage> stages, LineVisibility visibility) {
    return steps.stream()
        .map(
            s ->
                agrees(
                    s.mark().seen().orElseThrow(),
                    stages.get(s.mark().number()).piece(),
                    visibility))
        .toList();
  }

  private static boolean agrees(Seen seen, Workpiece piece, LineVisibility visibility) {
    List<SeamPlace> meant =
        SeamPlace.of(piece, visibility).stream().filter(p -> isMeant(seen, p)).toList();
    int latest = meant.stream().mapToInt(p -> p.plane().name().step()).max().orElse(0);
    int made = seen.step().orElse(latest);
    List<SeamPlace> shown =
        meant.stream().filter(p -> p.plane().name().step() == made && p.shows(visibility)).toList();
    if (seen.line() == Seen.Look.NONE) {
      return shown.isEmpty();
    }
    return seen.width().isEmpty() ? !shown.isEmpty() : fits(seen.width().get().metres(), shown);
  }

  private static boolean fits(double width, List<SeamPlace> shown) {
    double allowed = Math.max(WIDTH_METRES, WIDTH_SHARE * width);
    return shown.stream()
        .mapToDouble(p -> p.carbon().metres() * p.trace())
        .anyMatch(w -> Math.abs(w - width) <= allowed);
  }

  /** Whether a sighting speaks of such seams. */
  static boolean isMeant(Seen seen, SeamName made) {
    SeamName.Kind meant =
        switch (seen.seams()) {
          case LAYERS -> SeamName.Kind.LAYERS;
          case RESTACK -> SeamName.Kind.RESTACK;
          case TILE -> SeamName.Kind.TILES;
        };
    return made.kind() == meant && seen.step().orElse(made.step()) == made.step();
  }

  private static boolean isMeant(Seen seen, SeamPlace p) {
    return isMeant(seen, p.plane().name());
  }
}
