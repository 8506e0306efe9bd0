package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;

/**
 * Brinell and Vickers hardness of steel.
 *
 * <p>HB = 0.95 HV
 *
 * <p>ISO 18265, from memory; the rows of ASTM E140, table 1, that were seen (371 HB beside 392 HV,
 * 421 beside 446, 481 beside 513) have the same within a hundredth.
 *
 * <p>Range: 80 to 450 HB.
 *
 * <p>Error: 2 % against E140 above 20 HRC; below that E140 sets the two equal, 5 % from here.
 */
public final class Iso18265Brinell extends PublishedFormula {
  Iso18265Brinell(Coefficients k) {
    super(
        k,
        "Vickers against Brinell hardness",
        "HV",
        List.of(new Range("hardness", "HB", 80, 450)),
        "2 % against ASTM E140, 5 % below 20 HRC");
  }

  /** Vickers hardness of a Brinell hardness. */
  public double vickers(double brinell) {
    return brinell / k.get("Vickers");
  }
}
