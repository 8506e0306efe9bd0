package seamsoak.numeric;

import java.util.Map;
import java.util.NavigableMap;

/** A line through points that rise in x: straight between them, level beyond its ends. */
public final class Polyline {
  private Polyline() {}

  /** Its height at x. */
  public static double at(NavigableMap<Double, Double> points, double x) {
    Map.Entry<Double, Double> below = points.floorEntry(x);
    Map.Entry<Double, Double> above = points.higherEntry(x);
    if (below == null) {
      return above.getValue();
    }
    return above == null ? below.getValue() : through(below, above, x);
  }

  /** Height at x of the straight line through two points. */
  public static double through(
      Map.Entry<Double, Double> one, Map.Entry<Double, Double> other, double x) {
    double share = (x - one.getKey()) / (other.getKey() - one.getKey());
    return one.getValue() + share * (other.getValue() - one.getValue());
  }
}
