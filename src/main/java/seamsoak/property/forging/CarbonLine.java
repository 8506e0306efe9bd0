package seamsoak.property.forging;

import seamsoak.property.correlation.CarbonTable;
import seamsoak.property.correlation.Coefficients;

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
public final class CarbonLine extends CarbonTable {
  public CarbonLine(Coefficients k, String gives) {
    super(k, gives, "C");
  }

  /** The temperature in C at a carbon content in wt%. */
  public double celsius(double carbon) {
    return at(carbon);
  }
}
