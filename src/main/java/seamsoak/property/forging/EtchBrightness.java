package seamsoak.property.forging;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.P;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;

/**
 * How bright hardened steel comes out of the etch beside another.
 *
 * <p>b = Ni + 0.5 Cr + 5 P - 0.5 Mn
 *
 * <p>A number without unit, elements in wt%. 75Ni8 beside 1084, the pair that shows best, is 2.1
 * apart.
 *
 * <p>Our judgement after what shops report: nickel stays bright, chromium grayish, phosphorus
 * bright, manganese darkens. What carbon adds is told by the hardness of its martensite, see {@link
 * seamsoak.property.etch.Whiteness}; structure is left out.
 *
 * <p>Range: elements at the ends of {@link LowAlloy}. Stated error: none.
 */
public final class EtchBrightness extends PublishedFormula {

  EtchBrightness(Coefficients k) {
    super(k, "brightness after etching", "1", List.of(), "none, judgement");
  }

  /** The brightness. */
  public double of(Composition steel) {
    return k.linear(LowAlloy.capped(steel), NI, CR, P, MN);
  }
}
