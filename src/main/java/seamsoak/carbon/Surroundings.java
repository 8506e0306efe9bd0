package seamsoak.carbon;

import java.util.function.DoubleUnaryOperator;

/**
 * What the fire does to a bare surface, functions of temperature in kelvin.
 *
 * @param activity carbon activity under the scale
 * @param scaling parabolic constant k_c of metal loss, m2/s: loss = sqrt(2 k_c t)
 * @param stillAir what is different in the still air of a kiln
 */
public record Surroundings(
    DoubleUnaryOperator activity, DoubleUnaryOperator scaling, StillAir stillAir) {

  /** Scale that grows in still air, by the metal below it. */
  public interface StillAir {
    /** The same as elsewhere. */
    StillAir NOTHING =
        new StillAir() {
          @Override
          public double open(Metal metal, double kelvin) {
            return 1;
          }

          @Override
          public double scaling(Metal metal) {
            return 1;
          }
        };

    /** How freely carbon leaves through it, 0 to 1. */
    double open(Metal metal, double kelvin);

    /** What the scaling constant is multiplied by. */
    double scaling(Metal metal);
  }

  /** The same in every air. */
  public Surroundings(DoubleUnaryOperator activity, DoubleUnaryOperator scaling) {
    this(activity, scaling, StillAir.NOTHING);
  }
}
