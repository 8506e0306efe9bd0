package seamsoak.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineBounds;
import seamsoak.carbon.Plane;
import seamsoak.carbon.Strip;

/**
 * Carbon across the worst seam at each stage of the treatment.
 *
 * @param seams which ones
 * @param farPct carbon far from it at first, wt%
 * @param stages before, after the soak, after the schedule
 */
public record SeamProfile(Joints seams, double farPct, List<AtStage> stages) {

  /** When the billet is looked at. */
  public enum Moment {
    BEFORE,
    AFTER_SOAK,
    AFTER_SCHEDULE
  }

  /**
   * Carbon against distance from the seam, square to it; one side where both are alike.
   *
   * @param stage when
   * @param missingPct carbon missing at the seam, wt%
   * @param contrast K in the finished blade: the line shows from 1 on
   * @param points in order of distance
   */
  public record AtStage(Moment stage, double missingPct, double contrast, List<Point> points) {}

  /** A point; negative distances lie on the first side of a seam between unlike faces. */
  public record Point(double distanceMm, double carbonPct) {}

  /** Of the seam that shows most in the first of the pieces. */
  public static Optional<SeamProfile> of(List<Moment> moments, List<Workpiece> pieces, Etch etch) {
    List<SeamPlace> places = SeamPlace.of(pieces.get(0));
    Optional<SeamPlace> worst =
        places.stream()
            .filter(p -> !p.isBoundary() && p.sight().isPresent())
            .max(Comparator.comparingDouble(p -> p.sight().orElseThrow().missingPct()));
    return worst
        .map(
            w -> {
              List<AtStage> stages = new ArrayList<>();
              for (int i = 0; i < pieces.size(); i++) {
                Optional<AtStage> next = atStage(moments.get(i), pieces.get(i), w, etch);
                if (next.isEmpty()) {
                  break; // the fire has eaten its way past the seam
                }
                stages.add(next.get());
              }
              return new SeamProfile(w.joints(), w.carbon().farPct(), stages);
            })
        .filter(p -> !p.stages().isEmpty());
  }

  private static Optional<AtStage> atStage(
      Moment moment, Workpiece piece, SeamPlace first, Etch etch) {
    return SeamPlace.of(piece).stream()
        .filter(p -> p.line().kind() == first.line().kind() && p.joints().equals(first.joints()))
        .filter(p -> p.trace() == first.trace())
        .findFirst()
        .map(
            p ->
                new AtStage(
                    moment,
                    p.carbon().depthPct(),
                    p.contrast(etch),
                    points(p.line().strip(), p.plane())))
        .filter(s -> s.points().size() > 1);
  }

  /** Spots as wide as are told of; between seams that lie closer than those, each cell. */
  private static List<Point> points(Strip s, Plane plane) {
    List<Point> points = points(s, plane, Spots.PROBE_METRES);
    return points.size() > 1 ? points : points(s, plane, 0);
  }

  /** Half-way to the next seams. */
  private static List<Point> points(Strip s, Plane plane, double probeMetres) {
    LineBounds bounds = LineBounds.of(s, plane);
    List<Point> points = new ArrayList<>();
    Strip near = s.part(bounds.from(), plane.face());
    for (Spots.Spot spot : Spots.side(near, near.cells() - 1, -1, probeMetres)) {
      if (spot.metres() <= bounds.nearMetres(s)) {
        points.add(0, new Point(-spot.metres() * 1e3, spot.percent()));
      }
    }
    Strip far = s.part(plane.face(), bounds.to());
    for (Spots.Spot spot : Spots.side(far, 0, 1, probeMetres)) {
      if (spot.metres() <= bounds.farMetres(s)) {
        points.add(new Point(spot.metres() * 1e3, spot.percent()));
      }
    }
    return List.copyOf(points);
  }
}
