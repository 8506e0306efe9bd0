package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Element;

/**
 * Growth of austenite that becomes martensite.
 *
 * <p>dV/V = 4.64 - 0.53 C; the length grows by a third of it
 *
 * <p>In percent, C in wt% dissolved in the austenite.
 *
 * <p>ASM Handbook vol. 4. Atomic volumes of vol. 4A give 3.4 to 3.7 % instead: the two families of
 * data disagree.
 *
 * <p>Range: not at hand; taken as up to 1.5 %C, judgement.
 *
 * <p>Stated error: none.
 */
public final class Asm4MartensiteGrowth extends PublishedFormula {

  Asm4MartensiteGrowth(Coefficients k) {
    super(
        k,
        "growth of austenite that becomes martensite",
        "% of volume",
        List.of(Correlation.range(Element.C, 0, 1.5)),
        "none stated; asm-handbook-4a gives a fourth less");
  }

  /** Growth of the volume, percent. */
  public double volumePct(double dissolvedCarbonPct) {
    return k.get("constant") + k.get("C") * dissolvedCarbonPct;
  }

  /** Growth of the length, percent. */
  public double lengthPct(double dissolvedCarbonPct) {
    return volumePct(dissolvedCarbonPct) / 3;
  }
}
