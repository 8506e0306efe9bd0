package seamsoak.plane;

import static seamsoak.support.Analyses.CORRELATIONS;

import java.util.function.DoubleUnaryOperator;

/**
 * What the fire does to a bare face, by kelvin: carbon activity under the scale, and k_c in X^2 = 2
 * k_c t for the metal eaten, m2/s.
 */
record PlaneFire(DoubleUnaryOperator activity, DoubleUnaryOperator scaling) {
  /** Scale with 1 atm of CO under it, eating metal as measured on steel. */
  static final PlaneFire FORGE =
      new PlaneFire(
          t -> Math.exp(CORRELATIONS.phases().scaledSurface().lnActivity(t, 1)),
          t -> CORRELATIONS.forging().steelScaling().squareMetresPerSecond(t));

  /**
   * Activity held at a face as open as a share says: a covered face is held half-way to its own.
   */
  double held(double share, PlaneMetal metal, PlaneMetal.Isotherm law, double kelvin) {
    double scaled = activity.applyAsDouble(kelvin);
    return scaled + (1 - share) * Math.max(0, law.activity(metal.startRatio()) - scaled);
  }
}
