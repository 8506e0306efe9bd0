package seamsoak.soak;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import seamsoak.billet.Seen;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.SeamName;
import seamsoak.state.Etch;
import seamsoak.state.EtchBand;
import seamsoak.state.Joints;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamPlace;

/**
 * One look at the billet, ready to be held against a history.
 *
 * @param seen what was seen
 * @param step after which
 * @param latest whether nothing comes between it and the soak
 * @param state it was etched in
 * @param etch what shows then
 */
record Looking(Seen seen, int step, boolean latest, Seen.Etched state, EtchBand etch) {

  /** What a history has to show there. */
  Belief.Told against(List<Stage> stages, double ferritePlace, double broadMetres) {
    Workpiece piece = stages.get(step).piece();
    List<SeamPlace> places = SeamPlace.of(piece, broadMetres);
    Etch etched = etch.at(ferritePlace);
    List<SeamPlace> meant = meant(places);
    double contrast =
        seen.part() == Seen.Part.CROSSING
            ? crossings(places).mapToDouble(c -> c.contrast(etched)).max().orElse(0)
            : meant.stream().mapToDouble(p -> p.contrast(etched)).max().orElse(0);
    return new Belief.Told(state.ordinal(), seen.line(), contrast, lnWidth(meant, etched));
  }

  /** Whether it was at this seam, of those of a piece. */
  boolean at(SeamPlace place, List<SeamPlace> places) {
    return seen.part() == Seen.Part.LINE && meant(places).contains(place);
  }

  /** Whether it was at this crossing. */
  boolean at(SeamCrossing c) {
    return seen.part() == Seen.Part.CROSSING
        && (crosses(c.first(), c.second()) || crosses(c.second(), c.first()));
  }

  /** Of all seams meant, those made last unless it is said which. */
  private List<SeamPlace> meant(List<SeamPlace> places) {
    List<SeamPlace> all = places.stream().filter(p -> isMeant(seen.where(), p.joints())).toList();
    int latest = all.stream().mapToInt(p -> p.plane().name().step()).max().orElse(0);
    int made = seen.where().step().orElse(latest);
    return all.stream().filter(p -> p.plane().name().step() == made).toList();
  }

  private Stream<SeamCrossing> crossings(List<SeamPlace> places) {
    return SeamCrossing.of(places).stream()
        .filter(c -> crosses(c.first(), c.second()) || crosses(c.second(), c.first()));
  }

  private boolean crosses(SeamPlace one, SeamPlace other) {
    return isMeant(seen.where(), one.joints())
        && seen.across().map(a -> isMeant(a, other.joints())).orElse(true);
  }

  /** Of the line that shows most. */
  private OptionalDouble lnWidth(List<SeamPlace> meant, Etch etched) {
    if (seen.width().isEmpty() || seen.part() == Seen.Part.CROSSING) {
      return OptionalDouble.empty();
    }
    return meant.stream()
        .filter(p -> p.sight().isPresent() && p.carbon().metres() > 0)
        .max((a, b) -> Double.compare(a.contrast(etched), b.contrast(etched)))
        .map(p -> Math.log(seen.width().get().metres() / (p.carbon().metres() * p.trace())))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
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
        && where.lie().map(Looking::way).map(w -> w == joints.way()).orElse(true);
  }

  private static Joints.Way way(Seen.Lie lie) {
    return switch (lie) {
      case SIDE_BY_SIDE -> Joints.Way.SIDE_BY_SIDE;
      case ONE_ON_ANOTHER -> Joints.Way.ONE_ON_ANOTHER;
    };
  }
}
