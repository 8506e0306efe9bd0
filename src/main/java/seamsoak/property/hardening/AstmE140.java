package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;

/**
 * Rockwell C and Vickers hardness of steel.
 *
 * <p>HV = (223 HRC + 14500) / (100 - HRC); HRC = (100 HV - 14500) / (HV + 223)
 *
 * <p>ASTM E140, table 1 (non-austenitic steels), in a closed form read in two copies.
 *
 * <p>Range: 20 to 68 HRC.
 *
 * <p>Error: within 0.4 HRC of the table; the standard calls conversions approximate and rounds them
 * to whole numbers.
 */
public final class AstmE140 extends PublishedFormula {
  private static final Range HARDNESS = new Range("hardness", "HRC", 20, 68);

  public AstmE140(Coefficients k) {
    super(
        k,
        "Rockwell C against Vickers hardness",
        "HRC",
        List.of(HARDNESS),
        "0.4 HRC against the table, which rounds to whole numbers");
  }

  /** Vickers hardness of a Rockwell C hardness. */
  public double vickers(double hrc) {
    return (k.get("slope") * hrc + k.get("constant")) / (k.get("pole") - hrc);
  }

  /** Rockwell C hardness of a Vickers hardness. */
  public double hrc(double vickers) {
    return (k.get("pole") * vickers - k.get("constant")) / (vickers + k.get("slope"));
  }
}
