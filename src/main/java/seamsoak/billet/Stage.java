package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.Zones;
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
  /** Share of the starting carbon at which the skin is said to end. */
  public static final double SKIN_ENDS_AT = 0.9;

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

  /** Sound metal this thick ends a skin; a trace of carbide at a boundary does not, m. */
  private static final double SOUND_METRES = 50e-6;

  /**
   * Depth below the face at which a steel has a share of its due again, m. Its due is the carbon it
   * came with, or what the core's activity would give it if that is less: a soft layer is no skin.
   */
  public static double skinMetres(Strip skin, double share) {
    int core = core(skin);
    double activity =
        skin.metal(core).law().at(CarbonLaw.COMPARED_AT_KELVIN).activity(skin.ratio(core));
    int last = skin.cells() - 1;
    double depth = 0;
    double found = 0;
    double before = Double.NaN;
    double middleBefore = 0;
    for (int i = 0; i <= last; i++) {
      Metal metal = skin.metal(i);
      double even = metal.law().at(CarbonLaw.COMPARED_AT_KELVIN).ratioAt(activity);
      double due = metal.percent(Math.min(metal.startRatio(), even));
      double here = due > 0 ? skin.percent(i) / due : 1;
      double middle = depth + 0.5 * skin.metres(i);
      if (here < share) {
        found = Double.NaN;
      } else if (Double.isNaN(found)) {
        found = middleBefore + (middle - middleBefore) * (share - before) / (here - before);
      }
      depth += skin.metres(i);
      if (!Double.isNaN(found) && depth - found > SOUND_METRES) {
        return found;
      }
      before = here;
      middleBefore = middle;
    }
    return Double.isNaN(found) ? depth : found;
  }

  /**
   * Beyond the last seam, half-way to the end or there, where more carbon is; a single cell of
   * carbide at a boundary is not the core.
   */
  private static int core(Strip skin) {
    int[] zones = Zones.of(skin);
    int from = zones[zones.length - 2];
    int end = skin.cells() - 1;
    int middle = from + skin.part(from, skin.cells()).middleCell();
    return skin.ratio(end) >= skin.ratio(middle) ? end : middle;
  }
}
