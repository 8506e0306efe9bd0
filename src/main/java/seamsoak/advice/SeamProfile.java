package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Family;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Line;
import seamsoak.carbon.Strip;

/**
 * Carbon across the worst seam at each stage of the treatment.
 *
 * @param seams name of the seams
 * @param evenPct carbon there if it were evened out, wt%
 * @param visibleBelowPct a line shows while the seam has less than this, wt%
 * @param stages before, after the soak, after the schedule
 */
public record SeamProfile(
    String seams, double evenPct, double visibleBelowPct, List<AtStage> stages) {

  /**
   * Carbon against distance from the seam, square to it; one side where both are alike.
   *
   * @param stage its name
   * @param dipPct carbon missing at the seam, wt%
   * @param points in order of distance
   */
  public record AtStage(String stage, double dipPct, List<Point> points) {}

  /** A point; negative distances lie on the first side of a seam between unlike faces. */
  public record Point(double distanceMm, double carbonPct) {}

  private static final double EVENED_AT_KELVIN = 1373.15;

  /** Of the seam that shows worst, or dips most, in the first of the pieces. */
  static Optional<SeamProfile> of(
      List<String> names, List<Workpiece> pieces, double visibleDipPct) {
    Workpiece first = pieces.get(0);
    Optional<Integer> worst = worst(first);
    return worst.map(
        w -> {
          Strip start = first.families().get(w).strip();
          double even = new EvenCarbon(start, EVENED_AT_KELVIN).percent(start.seam());
          List<AtStage> stages = new ArrayList<>();
          for (int i = 0; i < pieces.size(); i++) {
            stages.add(atStage(names.get(i), pieces.get(i).families().get(w).strip()));
          }
          return new SeamProfile(
              first.families().get(w).name(), even, even - visibleDipPct, stages);
        });
  }

  private static AtStage atStage(String name, Strip strip) {
    return new AtStage(name, Line.of(strip).dipPct(), points(strip));
  }

  private static Optional<Integer> worst(Workpiece piece) {
    List<Family> all = piece.families();
    Optional<Integer> best = Optional.empty();
    double most = -1;
    for (int i = 0; i < all.size(); i++) {
      Optional<Line> line = all.get(i).line();
      boolean onFace = Double.isFinite(all.get(i).trace(piece.shownFace()));
      if (line.isPresent() && onFace && line.get().dipPct() > most) {
        most = line.get().dipPct();
        best = Optional.of(i);
      }
    }
    return best;
  }

  private static List<Point> points(Strip s) {
    List<Point> points = new ArrayList<>();
    for (Spots.Spot spot : Spots.side(s, s.seam() - 1, -1, Spots.PROBE_METRES)) {
      points.add(0, new Point(-spot.metres() * 1e3, spot.percent()));
    }
    for (Spots.Spot spot : Spots.side(s, s.seam(), 1, Spots.PROBE_METRES)) {
      points.add(new Point(spot.metres() * 1e3, spot.percent()));
    }
    return List.copyOf(points);
  }
}
