package seamsoak.property.hardening;

import seamsoak.property.correlation.CarbonTable;
import seamsoak.property.correlation.Coefficients;

/**
 * Hardness of plain carbon steel bars cooled in air: ferrite and pearlite.
 *
 * <p>Straight between the points of the table, level beyond its ends
 *
 * <p>Brinell hardness against carbon in wt%.
 *
 * <p>Handbook table of normalized one-inch bars, from memory.
 *
 * <p>Range: 0.15 to 0.95 %C, plain carbon steel; alloying adds to it.
 *
 * <p>Stated error: none.
 */
public final class NormalizedHardness extends CarbonTable {
  public NormalizedHardness(Coefficients k) {
    super(k, "hardness as normalized", "HB");
  }

  /** Brinell hardness of a bar of the table with that much carbon. */
  public double brinell(double carbonPct) {
    return at(carbonPct);
  }
}
