package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.carbon.Strip;
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
    List<String> remarks) {
  /** Share of the starting carbon at which the skin is said to end. */
  public static final double SKIN_ENDS_AT = 0.9;

  public Stage {
    remarks = List.copyOf(remarks);
  }

  /** Depth below the metal at which a skin has a share of the core's carbon again, m. */
  public static double skinMetres(Strip skin, double share) {
    int core = skin.cells() - 1;
    double wanted = share * skin.percent(core);
    double depth = skin.metres();
    double end = depth;
    for (int i = core; i >= 0; i--) {
      double middle = end - 0.5 * skin.metres(i);
      if (skin.percent(i) < wanted) {
        if (i == core) {
          return depth;
        }
        double next = end + 0.5 * skin.metres(i + 1);
        double c = skin.percent(i);
        return middle + (next - middle) * (wanted - c) / (skin.percent(i + 1) - c);
      }
      end -= skin.metres(i);
    }
    return 0;
  }
}
