package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.heat.HeatCurve;

/**
 * A billet after a step.
 *
 * @param step number of the step, from 1; 0 for the stack as laid
 * @param kind such as {@code weld}
 * @param piece the metal
 * @param lastHeat the last stay in the fire so far in which grains formed anew, if any
 * @param endKelvin temperature at which the step leaves it
 * @param scaledMetres metal that scale has taken off a face across the thickness in this step, m
 * @param worstMassError carbon not accounted for in any strip in this step, relative
 * @param remarks what the smith should know of this step
 * @param now the metal after the last of its heats that was done, where work stands in this step;
 *     else the metal at its end
 */
public record Stage(
    int step,
    String kind,
    Workpiece piece,
    Optional<HeatCurve> lastHeat,
    double endKelvin,
    double scaledMetres,
    double worstMassError,
    List<Remark> remarks,
    Workpiece now) {
  /** What can happen in a step that the smith did not ask for. */
  public sealed interface Remark {}

  /** The body below is bare. */
  public record JacketScaledAway() implements Remark {}

  /**
   * What becomes of a distance between seams, of 1.
   *
   * @param atHalfRadius half-way to the face
   * @param atFullRadius at the face
   */
  public record Twisted(double atHalfRadius, double atFullRadius) implements Remark {}

  public Stage {
    remarks = List.copyOf(remarks);
  }

  /** The same with the metal as it is where work stands. */
  public Stage atNow() {
    return withPiece(now);
  }

  Stage withPiece(Workpiece next) {
    return new Stage(
        step, kind, next, lastHeat, endKelvin, scaledMetres, worstMassError, remarks, now);
  }
}
