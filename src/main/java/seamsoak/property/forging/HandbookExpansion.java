package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Mean expansion from 20 C of a class of alloys that the iron lattice does not describe: austenitic
 * stainless steel, nickel, steel with much chromium.
 *
 * <p>mean expansion = m100 + s (T - 100)
 *
 * <p>In 1e-6 per K, T in C; m100 from 20 to 100 C, the published figure of the grade where there is
 * one.
 *
 * <p>Handbook tables, from memory: 304 17.2 to 100 C and 18.7 to 650 C; 410 9.9 to 100 C and 11.6
 * to 538 C; nickel 13.3 to 100 C and 16.4 to 870 C (the last pair read).
 *
 * <p>Range: 20 to 870 C; straight on beyond.
 *
 * <p>Stated error: none.
 */
public final class HandbookExpansion extends PublishedFormula {
  private static final double REFERENCE_CELSIUS = 100;

  HandbookExpansion(Coefficients k, String of) {
    super(
        k,
        "mean expansion of " + of,
        "1e-6/K",
        List.of(Correlation.celsiusRange(20, 870)),
        "none stated");
  }

  /** Mean expansion from 20 to 100 C where the grade has no published one, 1e-6/K. */
  public double usual() {
    return k.get("at 100");
  }

  /** Mean expansion from 20 C to a temperature, 1e-6/K. */
  public double meanMicroPerKelvin(double to100, double celsius) {
    return to100 + k.get("slope") * (celsius - REFERENCE_CELSIUS);
  }
}
