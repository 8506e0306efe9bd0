package seamsoak.property.forging;

import seamsoak.property.correlation.Published;

/** A parabolic law of how fast scale eats metal. Two compete; the truth lies between them. */
public interface ScalingConstant extends Published {
  /** Constant k of X^2 = 2 k t for the metal lost, m2/s. */
  double squareMetresPerSecond(double kelvin);
}
