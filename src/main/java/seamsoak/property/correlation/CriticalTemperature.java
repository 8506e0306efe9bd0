package seamsoak.property.correlation;

import seamsoak.steel.Composition;
import seamsoak.unit.Temperature;

/** A published regression of a transformation temperature on the analysis. Several compete. */
public interface CriticalTemperature extends Published {
  /** Absolute zero in C. */
  double ABSOLUTE_ZERO = -Temperature.ZERO_CELSIUS;

  /**
   * The temperature in C. Finite for every analysis; outside the regression's range {@link
   * #exceeded} says so.
   */
  double celsius(Composition c);
}
