package seamsoak.property.correlation;

import seamsoak.steel.Composition;

/** A published regression of a transformation temperature on the analysis. Several compete. */
public interface CriticalTemperature extends Published {
  /** Absolute zero in C. */
  double ABSOLUTE_ZERO = -273.15;

  /**
   * The temperature in C. Finite for every analysis; outside the regression's range {@link
   * #exceeded} says so.
   */
  double celsius(Composition c);
}
