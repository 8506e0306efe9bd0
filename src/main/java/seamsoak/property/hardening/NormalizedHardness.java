package seamsoak.property.hardening;

import seamsoak.property.correlation.CarbonTable;
import seamsoak.property.correlation.Coefficients;

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
public final class NormalizedHardness extends CarbonTable {
  public NormalizedHardness(Coefficients k) {
    super(k, "hardness as normalized", "HV");
  }

  /** Vickers hardness with that much carbon. */
  public double vickers(double carbonPct) {
    return at(carbonPct);
  }
}
