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
 * @param spreadSquareMetres D t of carbon since the weld, times every later thinning squared, m2:
 *     no carbon line here can be narrower than {@link #narrowestMetres}
 */
public record Family(
    String name,
    Kind kind,
    int step,
    double share,
    Direction normal,
    Strip strip,
    double spreadSquareMetres) {

  /** Full width at half depth of an instantaneous line, over sqrt(D t): 4 sqrt(ln 2). */
  private static final double WIDTH = 4 * Math.sqrt(Math.log(2));

  /** What a family's planes are. */
  public enum Kind {
    /** Faces of a bar or tile, the same metal on both sides: a line there is carbon missing. */
    SEAM,
    /** Unlike layers: a boundary there is pattern. */
    LAYER
  }

  /** After a stay in the fire that spread carbon by a further D t. */
  public Family heated(Strip next, double diffused) {
    return new Family(name, kind, step, share, normal, next, spreadSquareMetres + diffused);
  }

  /** After a stretch. */
  Family stretched(Stretch f, Strip thinned) {
    double k = normal.thinning(f);
    return new Family(
        name, kind, step, share, normal.stretched(f), thinned, spreadSquareMetres * k * k);
  }

  /**
   * Least width that a line of missing carbon can have here by now, square to the seam, m: that of
   * one that began infinitely thin, until the seams next to it come in and it is a third of their
   * distance.
   */
  public double narrowestMetres() {
    double spacing = strip.metres() * (strip.seam() == 0 ? 2 : 1);
    return Math.min(WIDTH * Math.sqrt(spreadSquareMetres), spacing / 3);
  }

  Family turned(double newShare) {
    return new Family(name, kind, step, newShare, normal.turned(), strip, spreadSquareMetres);
  }

  Family withShare(double newShare) {
    return new Family(name, kind, step, newShare, normal, strip, spreadSquareMetres);
  }

  Family withNormal(Direction next) {
    return new Family(name, kind, step, share, next, strip, spreadSquareMetres);
  }

  /** The white line at it, or nothing where a boundary is pattern. */
  public Optional<Line> line() {
    return kind == Kind.SEAM ? Optional.of(Line.of(strip)) : Optional.empty();
  }

  /** Whether it is a seam at which at least that much carbon is missing, wt%. */
  boolean dips(double leastPct) {
    return kind == Kind.SEAM && Line.of(strip).dipPct() >= leastPct;
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
