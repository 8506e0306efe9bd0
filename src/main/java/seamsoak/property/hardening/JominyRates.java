package seamsoak.property.hardening;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.source.Range;

/**
 * How fast the end-quenched bar cools at 705 C (1300 F), by the distance from its quenched end.
 *
 * <p>Straight between the points of the table on logarithmic scales, straight on beyond them
 *
 * <p>Distance in sixteenths of an inch, rate in K/s.
 *
 * <p>Applied Metallurgy and Corrosion Control, fig. 6.12: rates read, distances from memory.
 *
 * <p>Range: 1 to 32 sixteenths.
 *
 * <p>Stated error: none.
 */
public final class JominyRates {
  private final NavigableMap<Double, Double> points;
  private final Correlation correlation;

  public JominyRates(Coefficients k) {
    this.points = new TreeMap<>(k.points());
    this.correlation =
        k.describe(
            "cooling rate of the end-quenched bar at 705 C",
            "K/s",
            List.of(new Range("distance", "1/16 in", points.firstKey(), points.lastKey())),
            "none stated");
  }

  /** What the table says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Cooling rate at 705 C at a distance from the quenched end, K/s. */
  public double kelvinPerSecond(double sixteenths) {
    Map.Entry<Double, Double> above = points.higherEntry(sixteenths);
    if (above == null) {
      above = points.lastEntry();
    }
    Map.Entry<Double, Double> below = points.lowerEntry(above.getKey());
    if (below == null) {
      below = above;
      above = points.higherEntry(below.getKey());
    }
    double share =
        Math.log(sixteenths / below.getKey()) / Math.log(above.getKey() / below.getKey());
    return below.getValue() * Math.pow(above.getValue() / below.getValue(), share);
  }
}
