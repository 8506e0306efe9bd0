package seamsoak.property.correlation;

import java.util.List;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;

/** A published regression of a transformation temperature on the analysis. Several compete. */
public interface CriticalTemperature {
  /** Absolute zero in C. */
  double ABSOLUTE_ZERO = -273.15;

  /** What the regression says about itself. */
  Correlation correlation();

  /**
   * The temperature in C. Finite for every analysis; outside the regression's range {@link
   * #exceeded} says so.
   */
  double celsius(Composition c);

  /** The ranges that the analysis leaves. */
  default List<Exceeded> exceeded(Composition c) {
    return correlation().exceeded(c);
  }
}
