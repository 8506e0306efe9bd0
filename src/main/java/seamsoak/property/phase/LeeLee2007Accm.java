package seamsoak.property.phase;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.source.Exceeded;
import seamsoak.source.Range;
import seamsoak.steel.Composition;

/**
 * What alloying elements add to the temperature at which the last cementite dissolves.
 *
 * <p>dAccm = 46.7 Cr + 19.0 C Cr - 6.1 Cr^2 + 7.6 Mn + 10.0 Mo - 6.8 Cr Mo - 6.9 Ni + 3.7 C Ni -
 * 2.7 Cr Ni + 0.8 Ni^2 + 16.7 Si
 *
 * <p>dAccm in C, elements in wt%.
 *
 * <p>S.-J. Lee, Y.-K. Lee, ISIJ Int. 47 (2007) 769-771; coefficients from memory. The paper's
 * carbon terms (224.4 + 992.4 C - 465.1 C^2) describe the metastable line of 0.2 to 0.7 %C, bend
 * over near 1.07 %C and are left out on purpose: add the shift to the iron-carbon line.
 *
 * <p>Range: 0.2 to 0.7 %C, up to 1.5 Mn, 0.3 Si, 2.8 Ni, 1.5 Cr, 0.6 Mo. The squares and products
 * turn about outside it (12 % Cr would lower the line), so Mn, Ni, Cr and Mo are capped at these
 * limits; Si and the carbon of the cross terms run on linearly.
 *
 * <p>Stated error: not at hand.
 */
public final class LeeLee2007Accm {
  private static final List<Range> RANGES =
      List.of(
          Correlation.range(C, 0.2, 0.7),
          Correlation.range(MN, 0, 1.5),
          Correlation.range(SI, 0, 0.3),
          Correlation.range(NI, 0, 2.8),
          Correlation.range(CR, 0, 1.5),
          Correlation.range(MO, 0, 0.6));

  private final Coefficients k;
  private final Correlation correlation;

  public LeeLee2007Accm(Coefficients k) {
    this.k = k;
    this.correlation = k.describe("alloy shift of Accm", "C", RANGES, "not at hand");
  }

  /** What the correlation says about itself. */
  public Correlation correlation() {
    return correlation;
  }

  /** The shift in C for the line at {@code carbonPct}, whatever carbon the analysis names. */
  public double alloyShiftCelsius(Composition c, double carbonPct) {
    Composition at = Correlation.capped(RANGES, c, MN, NI, CR, MO).with(C, carbonPct);
    return k.linear(at, CR, MN, MO, NI, SI)
        + k.product(at, C, CR, NI)
        + k.product(at, CR, CR, MO, NI)
        + k.product(at, NI, NI);
  }

  /** The ranges that the analysis leaves with that carbon in it. */
  public List<Exceeded> exceeded(Composition c, double carbonPct) {
    return correlation.exceededAtCarbon(c, carbonPct);
  }
}
