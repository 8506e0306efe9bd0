package seamsoak.property.critical;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.P;
import static seamsoak.steel.Element.S;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.steel.Composition;

/**
 * Upper critical temperature on heating.
 *
 * <p>Ac3 = 912 - 370 C - 27.4 Mn + 27.3 Si - 6.35 Cr - 32.7 Ni + 95.2 V + 72 Al + 5.57 W + 332 S +
 * 276 P + 16.2 C Mn + 32.3 C Si + 15.4 C Cr + 48 C Ni + 4.32 Si Cr - 17.3 Si Mo + 18.6 Si Ni + 4.8
 * Mn Ni + 40.5 Mo V + 174 C^2 + 2.46 Mn^2 - 6.86 Si^2 + 0.322 Cr^2 + 9.9 Mo^2 + 1.24 Ni^2 - 60.2
 * V^2 (and 190 Ti + 64.5 Nb + 485 N - 900 B, which an analysis does not name)
 *
 * <p>Ac3 in C, elements in wt%.
 *
 * <p>O.G. Kasatkin, B.B. Vinokur, V.L. Pilyushenko, Met. Sci. Heat Treat. 26 (1984) 27-31; partly
 * read, the rest from memory.
 *
 * <p>Range: to about 0.8 %C; alloying elements are capped at the limits of {@link Kasatkin}.
 *
 * <p>Stated error: residual deviation 14.5 C, from memory.
 */
public final class Kasatkin1984Ac3 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Kasatkin1984Ac3(Coefficients k) {
    this.k = k;
    this.correlation =
        k.describe("Ac3", "C", Kasatkin.ranges(3), "residual deviation 14.5 C, from memory");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    Composition at = Kasatkin.capped(c);
    return k.get("constant")
        + k.linear(at, C, MN, SI, CR, NI, V, AL, W, S, P)
        + k.product(at, C, MN, SI, CR, NI, C)
        + k.product(at, SI, CR, MO, NI, SI)
        + k.product(at, MN, NI, MN)
        + k.product(at, MO, V, MO)
        + k.product(at, CR, CR)
        + k.product(at, NI, NI)
        + k.product(at, V, V);
  }
}
