package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
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
public final class AstmE140 {
  private static final Range HARDNESS = new Range("hardness", "HRC", 20, 68);

  private final double slope;
  private final double constant;
  private final double pole;
  private final Correlation correlation;

  public AstmE140(Coefficients k) {
    this.slope = k.get("slope");
    this.constant = k.get("constant");
    this.pole = k.get("pole");
    this.correlation =
        k.describe(
            "Rockwell C against Vickers hardness",
            "HRC",
            List.of(HARDNESS),
            "0.4 HRC against the table, which rounds to whole numbers");
  }

  /** What the standard says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** Vickers hardness of a Rockwell C hardness. */
  public double vickers(double hrc) {
    return (slope * hrc + constant) / (pole - hrc);
  }

  /** Rockwell C hardness of a Vickers hardness. */
  public double hrc(double vickers) {
    return (pole * vickers - constant) / (vickers + slope);
  }
}
