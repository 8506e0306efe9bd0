package seamsoak.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.carbon.LineVisibility;

/**
 * Where the seams of one set cross those of another: the deepest place, and the last to clear.
 *
 * @param first the seams across the billet's thickness or its tiles
 * @param second those across its width
 * @param seamPct carbon there, wt% of the first seam's steel
 * @param farPct carbon far from both
 * @param contrast K: it shows from 1 on
 * @param visible whether it shows after etching
 * @param minutes that the recommended temperature takes until it no longer shows; empty where
 *     nothing is recommended, beyond 24 h, or after other steps than the last
 */
public record CrossingReport(
    Joints first,
    Joints second,
    double seamPct,
    double farPct,
    double contrast,
    boolean visible,
    Optional<Double> minutes) {

  /** With the minutes that it takes to clear. */
  public static CrossingReport of(
      SeamCrossing c, LineVisibility visibility, Optional<Double> minutes) {
    return new CrossingReport(
        c.first().joints(),
        c.second().joints(),
        c.seamPct(),
        c.first().corePct(),
        c.contrast().over(visibility),
        c.shows(visibility),
        minutes);
  }

  /** The one that stands out most. */
  public static Optional<CrossingReport> brightest(List<CrossingReport> crossings) {
    return crossings.stream().max(Comparator.comparingDouble(CrossingReport::contrast));
  }

  public static List<CrossingReport> of(List<SeamPlace> places, LineVisibility visibility) {
    return SeamCrossing.of(places).stream().map(c -> of(c, visibility, Optional.empty())).toList();
  }
}
