package seamsoak.billet;

import java.util.Optional;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Strip;

/**
 * Strips that share a direction: the seams of one weld, or the boundaries of the layers.
 *
 * @param name as answers show it
 * @param kind whether a line at it is a fault or belongs to the pattern
 * @param step number of the step that made it, from 1; 0 for the stack
 * @param share share of all pieces in which it runs this way
 * @param normal square to its planes
 * @param strip the metal across it
 */
public record Family(
    String name, Kind kind, int step, double share, Direction normal, Strip strip) {

  /** What a family's planes are. */
  public enum Kind {
    /** Faces of a bar or tile, the same metal on both sides: a line there is carbon missing. */
    SEAM,
    /** Unlike layers: a boundary there is pattern. */
    LAYER
  }

  Family withStrip(Strip next) {
    return new Family(name, kind, step, share, normal, next);
  }

  Family turned(double newShare) {
    return new Family(name, kind, step, newShare, normal.turned(), strip);
  }

  Family withShare(double newShare) {
    return new Family(name, kind, step, newShare, normal, strip);
  }

  Family withNormal(Direction next) {
    return new Family(name, kind, step, share, next, strip);
  }

  /** The white line at it, or nothing where a boundary is pattern. */
  public Optional<Line> line() {
    return kind == Kind.SEAM ? Optional.of(Line.of(strip)) : Optional.empty();
  }

  /** Width of a line on the shown face over its true width, infinite where it makes none. */
  public double trace(Direction shownFace) {
    return normal.traceOn(shownFace);
  }

  /** Whether a line shows on a face. */
  public boolean shows(Direction shownFace, LineVisibility visibility) {
    double trace = trace(shownFace);
    return kind == Kind.SEAM && Double.isFinite(trace) && visibility.shows(Line.of(strip), trace);
  }
}
