package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;

/**
 * Hardness of plain carbon steel cooled in air: ferrite and pearlite.
 *
 * <p>Straight between the points of the table, level beyond its ends; Vickers taken as Brinell
 *
 * <p>Hardness against carbon in wt%.
 *
 * <p>Handbook table of normalized one-inch bars, from memory.
 *
 * <p>Range: 0.15 to 0.95 %C, plain carbon steel; alloying adds to it.
 *
 * <p>Stated error: none.
 */
public final class NormalizedHardness {
  private final NavigableMap<Double, Double> points;
  private final Correlation correlation;

  public NormalizedHardness(Coefficients k) {
    this.points = new TreeMap<>(k.points());
    this.correlation =
        k.describe(
            "hardness as normalized",
            "HV",
            List.of(Correlation.range(C, points.firstKey(), points.lastKey())),
            "none stated");
  }

  /** What the table says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Vickers hardness with that much carbon. */
  public double vickers(double carbonPct) {
    Map.Entry<Double, Double> below = points.floorEntry(carbonPct);
    Map.Entry<Double, Double> above = points.higherEntry(carbonPct);
    if (below == null) {
      return points.firstEntry().getValue();
    }
    if (above == null) {
      return points.lastEntry().getValue();
    }
    double share = (carbonPct - below.getKey()) / (above.getKey() - below.getKey());
    return below.getValue() + share * (above.getValue() - below.getValue());
  }
}
