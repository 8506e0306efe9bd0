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
 * @param lastHeat the last stay in the fire so far, if any
 * @param endKelvin temperature at which the step leaves it
 * @param scaledMetres metal that scale has taken off a face across the thickness in this step, m
 * @param worstMassError carbon not accounted for in any strip in this step, relative
 * @param remarks what the smith should know of this step
 */
public record Stage(
    int step,
    String kind,
    Workpiece piece,
    Optional<HeatCurve> lastHeat,
    double endKelvin,
    double scaledMetres,
    double worstMassError,
    List<Remark> remarks) {
  /** What can happen in a step that the smith did not ask for. */
  public enum Remark {
    /** The body below is bare. */
    JACKET_SCALED_AWAY
  }

  public Stage {
    remarks = List.copyOf(remarks);
  }

  Stage withPiece(Workpiece next) {
    return new Stage(step, kind, next, lastHeat, endKelvin, scaledMetres, worstMassError, remarks);
  }
}
