package seamsoak.property.correlation;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.numeric.Polyline;
import seamsoak.steel.Element;

/**
 * What a handbook tabulates by carbon content alone: straight between the contents of the table,
 * level beyond its ends, which are its range.
 */
public abstract class CarbonTable extends PublishedFormula {
  private final NavigableMap<Double, Double> points;

  protected CarbonTable(Coefficients k, String gives, String unit) {
    this(k, gives, unit, new TreeMap<>(k.points()));
  }

  private CarbonTable(
      Coefficients k, String gives, String unit, NavigableMap<Double, Double> points) {
    super(
        k,
        gives,
        unit,
        List.of(Correlation.range(Element.C, points.firstKey(), points.lastKey())),
        "none stated");
    this.points = points;
  }

  /** What stands in the table for a carbon content in wt%. */
  protected final double at(double carbonPct) {
    return Polyline.at(points, carbonPct);
  }
}
