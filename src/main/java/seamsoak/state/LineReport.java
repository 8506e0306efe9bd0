package seamsoak.state;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Line;

/**
 * The white line at one set of seams, or at the boundaries of unlike layers.
 *
 * @param joints which seams
 * @param boundary whether they part unlike layers
 * @param sharePct share of the pieces in which they run this way, percent
 * @param steel the steel that its carbon is told of
 * @param seamPct carbon at the seam, wt% of that steel at equal activity
 * @param farPct the highest carbon about it, on the side that has less
 * @param dipPct carbon missing against the metal half-way to the next seams evened out, wt%: kept
 *     for comparison
 * @param widthMm width at half of what is missing against far, on the shown face; empty where the
 *     seams run along under it
 * @param trueWidthMm the same square to the seam
 * @param narrowestMm least width on the face that a line of missing carbon can have by now
 * @param contrast K, etched as it has cooled: the line shows from 1 on; empty where the seams run
 *     along under the face
 * @param visible whether it shows then
 * @param shows the same in each state, for the lines before a soak
 * @param minutes that the recommended temperature takes until it no longer shows; empty where
 *     nothing is recommended, beyond 24 h, or after other steps than the last
 */
public record LineReport(
    Joints joints,
    boolean boundary,
    double sharePct,
    String steel,
    double seamPct,
    double farPct,
    double dipPct,
    Optional<Double> widthMm,
    double trueWidthMm,
    Optional<Double> narrowestMm,
    Optional<Double> contrast,
    boolean visible,
    Optional<Shows> shows,
    Optional<Double> minutes) {

  /** The lines of a piece, in the order in which their seams were made. */
  public static List<LineReport> of(Workpiece piece, Etch etch) {
    return of(SeamPlace.of(piece), etch);
  }

  public static List<LineReport> of(List<SeamPlace> places, Etch etch) {
    return places.stream().map(p -> of(p, etch, Optional.empty(), Optional.empty())).toList();
  }

  /** With what it shows in each state and the minutes that it takes to clear. */
  public static LineReport of(
      SeamPlace p, Etch etch, Optional<Shows> shows, Optional<Double> minutes) {
    Line line = p.carbon();
    boolean shown = p.sight().isPresent();
    double contrast = p.contrast(etch);
    return new LineReport(
        p.joints(),
        p.isBoundary(),
        p.line().share() * 100,
        line.steel().name(),
        line.seamPct(),
        line.farPct(),
        line.dipPct(),
        shown ? Optional.of(line.metres() * p.trace() * 1e3) : Optional.empty(),
        line.metres() * 1e3,
        shown ? Optional.of(least(p, line) * p.trace() * 1e3) : Optional.empty(),
        shown ? Optional.of(contrast) : Optional.empty(),
        shows.map(s -> s.asCooled().likely()).orElse(contrast >= 1),
        shows,
        minutes);
  }

  /** Neighboring seams that came in early make a line finer than the rule for one alone. */
  private static double least(SeamPlace p, Line line) {
    return line.metres() > 0 ? Math.min(p.narrowestMetres(), line.metres()) : p.narrowestMetres();
  }

  /** Number of the step that made the seams, 0 for the stack. */
  public int step() {
    return joints.made().step();
  }

  /** Carbon missing at the seam against the metal far from it, wt%. */
  public double missingPct() {
    return farPct - seamPct;
  }
}
