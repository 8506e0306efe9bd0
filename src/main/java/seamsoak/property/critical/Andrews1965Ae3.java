package seamsoak.property.critical;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.CU;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.P;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.steel.Composition;

/**
 * Equilibrium upper critical temperature below the eutectoid carbon.
 *
 * <p>Ae3 = 910 - 203 sqrt(C) - 15.2 Ni + 44.7 Si + 104 V + 31.5 Mo + 13.1 W - 30 Mn - 11 Cr - 20 Cu
 * + 700 P + 400 Al (and + 120 As + 400 Ti, which an analysis does not name)
 *
 * <p>Ae3 in C, elements in wt%.
 *
 * <p>K.W. Andrews, J. Iron Steel Inst. 203 (1965) 721-727. Copies that lost the bracket of the
 * group Mn, Cr, Cu, P, Al, As, Ti print + 11 Cr + 20 Cu - 700 P - 400 Al; the signs here are from
 * memory and agree with what these elements do: P and Al form ferrite.
 *
 * <p>Range: low alloy steel up to 0.6 %C. Alloying elements, not carbon, are capped at the limits
 * of {@link LowAlloy}, phosphorus at 0.1 %. Above 0.6 %C the carbon term runs too low; take the
 * iron-carbon line and {@link #alloyShiftCelsius} there.
 *
 * <p>Stated error: none in the copies.
 */
public final class Andrews1965Ae3 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;
  private final Correlation shift;

  public Andrews1965Ae3(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("Ae3", "C", LowAlloy.ranges(0, 0.6), "none stated");
    this.shift = k.describe("alloy shift of A3", "C", LowAlloy.ranges(), "none stated");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  /** What the alloy terms by themselves say; they hold whatever the carbon is. */
  public Correlation shift() {
    return shift;
  }

  @Override
  public double celsius(Composition c) {
    return k.get("constant") + k.get("sqrt(C)") * Math.sqrt(c.carbon()) + alloyShiftCelsius(c);
  }

  /** What the alloying elements add to the line of plain iron and carbon, in C. */
  public double alloyShiftCelsius(Composition c) {
    return k.linear(LowAlloy.capped(c), NI, SI, V, MO, W, MN, CR, CU, P, AL);
  }
}
