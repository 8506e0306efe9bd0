package seamsoak.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where the seams of one set cross those of another: the deepest place, and the last to clear.
 *
 * @param first the seams across the billet's thickness or its tiles
 * @param second those across its width
 * @param seamPct carbon there, wt% of the first seam's steel
 * @param farPct carbon far from both
 * @param contrast K, etched as it has cooled: it shows from 1 on
 * @param visible whether it shows then
 * @param shows the same in each state, for those before a soak
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
    Optional<Shows> shows,
    Optional<Double> minutes) {

  /** With what it shows in each state and the minutes that it takes to clear. */
  public static CrossingReport of(
      SeamCrossing c, Etch etch, Optional<Shows> shows, Optional<Double> minutes) {
    double contrast = c.contrast(etch);
    return new CrossingReport(
        c.first().joints(),
        c.second().joints(),
        c.seamPct(),
        c.first().corePct(),
        contrast,
        shows.map(s -> s.asCooled().likely()).orElse(contrast >= 1),
        shows,
        minutes);
  }

  /** The one that stands out most: in the finished blade, or else as it is. */
  public static Optional<CrossingReport> brightest(List<CrossingReport> crossings) {
    return crossings.stream()
        .max(
            Comparator.comparingDouble(
                c -> c.shows().map(s -> s.hardened().contrast()).orElse(c.contrast())));
  }

  public static List<CrossingReport> of(List<SeamPlace> places, Etch etch) {
    return SeamCrossing.of(places).stream()
        .map(c -> of(c, etch, Optional.empty(), Optional.empty()))
        .toList();
  }
}
