package seamsoak.carbon;

import java.util.function.DoubleUnaryOperator;

/**
 * What the fire does to a bare surface, functions of temperature in kelvin.
 *
 * @param activity carbon activity under the scale
 * @param scaling parabolic constant k_c of metal loss, m2/s: loss = sqrt(2 k_c t)
 */
public record Surroundings(DoubleUnaryOperator activity, DoubleUnaryOperator scaling) {}
