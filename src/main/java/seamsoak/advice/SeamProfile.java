package seamsoak.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Plane;
import seamsoak.carbon.Strip;

/**
 * Carbon across the worst seam at each stage of the treatment.
 *
 * @param seams name of the seams
 * @param farPct carbon far from it at first, wt%
 * @param stages before, after the soak, after the schedule
 */
public record SeamProfile(String seams, double farPct, List<AtStage> stages) {

  /**
   * Carbon against distance from the seam, square to it; one side where both are alike.
   *
   * @param stage its name
   * @param missingPct carbon missing at the seam, wt%
   * @param contrast K: the line shows from 1 on
   * @param points in order of distance
   */
  public record AtStage(String stage, double missingPct, double contrast, List<Point> points) {}

  /** A point; negative distances lie on the first side of a seam between unlike faces. */
  public record Point(double distanceMm, double carbonPct) {}

  /** Of the seam that shows most in the first of the pieces. */
  static Optional<SeamProfile> of(
      List<String> names, List<Workpiece> pieces, LineVisibility visibility) {
    List<SeamPlace> places = SeamPlace.of(pieces.get(0), visibility);
    Optional<SeamPlace> worst =
        places.stream()
            .filter(p -> !p.isBoundary() && p.contrast().isPresent())
            .max(Comparator.comparingDouble(p -> p.contrast().orElseThrow().missingPct()));
    return worst.map(
        w -> {
          int line = pieces.get(0).lines().toList().indexOf(w.line());
          List<AtStage> stages = new ArrayList<>();
          for (int i = 0; i < pieces.size(); i++) {
            stages.add(atStage(names.get(i), pieces.get(i), line, w, visibility));
          }
          return new SeamProfile(w.name(), w.carbon().farPct(), stages);
        });
  }

  private static AtStage atStage(
      String name, Workpiece piece, int line, SeamPlace first, LineVisibility visibility) {
    SeamPlace now =
        SeamPlace.of(piece, visibility).stream()
            .filter(p -> p.line() == piece.lines().toList().get(line))
            .filter(p -> p.plane().name().equals(first.plane().name()))
            .findFirst()
            .orElseThrow();
    return new AtStage(
        name,
        now.carbon().depthPct(),
        now.contrast().orElseThrow().over(visibility),
        points(now.line().strip(), now.plane()));
  }

  /** Half-way to the next seams. */
  private static List<Point> points(Strip s, Plane plane) {
    int before = 0;
    int after = s.cells();
    for (Plane p : s.planes()) {
      before = p.face() < plane.face() ? p.face() : before;
      after = p.face() > plane.face() ? Math.min(after, p.face()) : after;
    }
    List<Point> points = new ArrayList<>();
    Strip near = s.part(before, plane.face());
    double reach = before > 0 ? near.metres() / 2 : near.metres();
    for (Spots.Spot spot : Spots.side(near, near.cells() - 1, -1, Spots.PROBE_METRES)) {
      if (spot.metres() <= reach) {
        points.add(0, new Point(-spot.metres() * 1e3, spot.percent()));
      }
    }
    Strip far = s.part(plane.face(), after);
    reach = after < s.cells() ? far.metres() / 2 : far.metres();
    for (Spots.Spot spot : Spots.side(far, 0, 1, Spots.PROBE_METRES)) {
      if (spot.metres() <= reach) {
        points.add(new Point(spot.metres() * 1e3, spot.percent()));
      }
    }
    return List.copyOf(points);
  }
}
