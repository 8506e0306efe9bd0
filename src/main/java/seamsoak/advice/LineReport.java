package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Family;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;

/**
 * The white line at one set of seams.
 *
 * @param name of the seams
 * @param step number of the step that made them, 0 for the stack
 * @param sharePct share of the pieces in which they run this way, percent
 * @param dipPct carbon missing at the seam against the same steel evened out, wt%
 * @param widthMm width of the line on the shown face; empty where the seams run along under it
 * @param trueWidthMm width square to the seam
 * @param narrowestMm least width on the face that a line of missing carbon can have by now
 * @param visible whether it shows after etching
 */
public record LineReport(
    String name,
    int step,
    double sharePct,
    double dipPct,
    Optional<Double> widthMm,
    double trueWidthMm,
    Optional<Double> narrowestMm,
    boolean visible) {

  /** The lines of a piece, in the order in which their seams were made; boundaries left out. */
  static List<LineReport> of(Workpiece piece, LineVisibility visibility) {
    List<LineReport> all = new ArrayList<>();
    for (Family f : piece.families()) {
      f.line().ifPresent(line -> all.add(of(f, line, piece, visibility)));
    }
    return List.copyOf(all);
  }

  private static LineReport of(Family f, Line line, Workpiece piece, LineVisibility visibility) {
    double trace = f.trace(piece.shownFace());
    boolean shown = Double.isFinite(trace);
    return new LineReport(
        f.name(),
        f.step(),
        f.share() * 100,
        line.dipPct(),
        shown ? Optional.of(line.metres() * trace * 1e3) : Optional.empty(),
        line.metres() * 1e3,
        shown ? Optional.of(least(f, line) * trace * 1e3) : Optional.empty(),
        shown && visibility.shows(line, trace));
  }

  /** Neighboring seams that came in early make a line finer than the rule for one alone. */
  private static double least(Family f, Line line) {
    return line.dipPct() > 0 ? Math.min(f.narrowestMetres(), line.metres()) : f.narrowestMetres();
  }
}
