package seamsoak.soak;

import java.util.List;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.SeamName;
import seamsoak.state.Joints;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamPlace;

/**
 * What the smith saw at the seams, held against a possible history.
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

  /** A width read off the face agrees within this share of it, or this many metres; judgement. */
  private static final double WIDTH_SHARE = 0.3;

  private static final double WIDTH_METRES = 0.15e-3;

  /** A line this much finer than any carbon line can be is something else and says nothing. */
  private static final double CLEARLY_FINER = 0.5;

  public static Sightings of(Billet billet) {
    return new Sightings(
        billet.steps().stream()
            .flatMap(s -> s.mark().seen().stream().map(seen -> new Sighting(s, seen)))
            .toList());
  }

  /** Without those whose line is too fine to be missing carbon, judged by a full walk. */
  public Sightings ofCarbon(List<Stage> stages) {
    return new Sightings(all.stream().filter(s -> !tooFine(s, stages)).toList());
  }

  private static boolean tooFine(Sighting sighting, List<Stage> stages) {
    Seen seen = sighting.seen();
    Workpiece piece = stages.get(sighting.step().mark().number()).piece();
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
    return all.isEmpty();
  }

  /** For each sighting, whether a walk would have shown it. */
  public List<Boolean> agree(List<Stage> stages, LineVisibility visibility) {
    return all.stream()
        .map(s -> agrees(s.seen(), stages.get(s.step().mark().number()).piece(), visibility))
        .toList();
  }

  private static boolean agrees(Seen seen, Workpiece piece, LineVisibility visibility) {
    List<SeamPlace> meant =
        SeamPlace.of(piece, visibility).stream().filter(p -> isMeant(seen, p)).toList();
    int latest = meant.stream().mapToInt(p -> p.plane().name().step()).max().orElse(0);
    int made = seen.where().step().orElse(latest);
    if (seen.part() == Seen.Part.CROSSING) {
      boolean crosses =
          SeamCrossing.of(SeamPlace.of(piece, visibility)).stream()
              .filter(
                  c -> crosses(seen, c.first(), c.second()) || crosses(seen, c.second(), c.first()))
              .anyMatch(c -> c.shows(visibility));
      return crosses == (seen.line() != Seen.Look.NONE);
    }
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
  static boolean isMeant(Seen.Where where, Joints joints) {
    SeamName made = joints.made();
    SeamName.Kind meant =
        switch (where.seams()) {
          case LAYERS -> SeamName.Kind.LAYERS;
          case RESTACK -> SeamName.Kind.RESTACK;
          case TILE -> SeamName.Kind.TILES;
        };
    return made.kind() == meant
        && where.step().orElse(made.step()) == made.step()
        && where.lie().map(Sightings::way).map(w -> w == joints.way()).orElse(true);
  }

  private static Joints.Way way(Seen.Lie lie) {
    return switch (lie) {
      case SIDE_BY_SIDE -> Joints.Way.SIDE_BY_SIDE;
      case ONE_ON_ANOTHER -> Joints.Way.ONE_ON_ANOTHER;
    };
  }

  private static boolean crosses(Seen seen, SeamPlace one, SeamPlace other) {
    return isMeant(seen.where(), one.joints())
        && seen.across().map(a -> isMeant(a, other.joints())).orElse(true);
  }

  private static boolean isMeant(Seen seen, SeamPlace p) {
    return isMeant(seen.where(), p.joints());
  }
}
