package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;

/**
 * Hardness of quenched steel that is all martensite, and of steel that is half martensite.
 *
 * <p>HRC = a0 + a1 C + a2 C^2 + a3 C^3 + a4 C^4 + a5 C^5
 *
 * <p>C in wt%, dissolved when quenched; alloying elements play no part.
 *
 * <p>ASTM A255; both polynomials read in open code, and so remembered.
 *
 * <p>Range: 0.10 to 0.69 %C; at the end of the range beyond it.
 *
 * <p>Stated error: none in the copy.
 */
public final class AstmA255Hardness extends PublishedFormula {
  private static final Range CARBON = Correlation.range(C, 0.1, 0.69);
  private static final int TERMS = 6;

  private final double[] full = new double[TERMS];
  private final double[] half = new double[TERMS];

  public AstmA255Hardness(Coefficients k) {
    super(k, "hardness of quenched steel", "HRC", List.of(CARBON), "none stated");
    for (int i = 0; i < TERMS; i++) {
      full[i] = k.get("martensite C^" + i);
      half[i] = k.get("half C^" + i);
    }
  }

  /** Hardness of martensite, HRC. */
  public double martensiteHrc(double dissolvedCarbonPct) {
    return polynomial(full, dissolvedCarbonPct);
  }

  /** How fast that rises, HRC per wt%; within the range. */
  double martensiteSlope(double dissolvedCarbonPct) {
    double sum = 0;
    for (int i = TERMS - 1; i >= 1; i--) {
      sum = sum * dissolvedCarbonPct + i * full[i];
    }
    return sum;
  }

  /** Hardness of half martensite, HRC. */
  public double halfMartensiteHrc(double dissolvedCarbonPct) {
    return polynomial(half, dissolvedCarbonPct);
  }

  private static double polynomial(double[] a, double carbon) {
    double c = Math.min(CARBON.high(), Math.max(CARBON.low(), carbon));
    double sum = 0;
    for (int i = TERMS - 1; i >= 0; i--) {
      sum = sum * c + a[i];
    }
    return sum;
  }
}
