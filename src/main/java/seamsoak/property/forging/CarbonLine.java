package seamsoak.property.forging;

import static seamsoak.steel.Element.C;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;

/**
 * A temperature that a handbook tabulates by carbon content alone.
 *
 * <p>T(C) straight between the carbon contents of the table, level beyond its ends
 *
 * <p>T in C, C in wt%.
 *
 * <p>The tables: highest forging and burning temperature attributed to Brady, Materials Handbook
 * (two values and the attribution from memory); highest safe forging temperature of ASM Handbook 14
 * (from memory).
 *
 * <p>Range: the carbon contents of the table; alloying is not considered.
 *
 * <p>Stated error: none.
 */
public final class CarbonLine {
  private final NavigableMap<Double, Double> points;
  private final Correlation correlation;

  public CarbonLine(Coefficients k, String gives) {
    this.points = new TreeMap<>(k.points());
    this.correlation =
        k.describe(
            gives,
            "C",
            List.of(Correlation.range(C, points.firstKey(), points.lastKey())),
            "none stated");
  }

  /** What the table says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** The temperature in C at a carbon content in wt%. */
  public double celsius(double carbon) {
    Map.Entry<Double, Double> below = points.floorEntry(carbon);
    Map.Entry<Double, Double> above = points.ceilingEntry(carbon);
    if (below == null) {
      return above.getValue();
    }
    if (above == null || above.getKey().equals(below.getKey())) {
      return below.getValue();
    }
    double share = (carbon - below.getKey()) / (above.getKey() - below.getKey());
    return below.getValue() + share * (above.getValue() - below.getValue());
  }
}
