package seamsoak.property.critical;

import static seamsoak.steel.Element.AL;
import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.S;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.steel.Composition;

/**
 * Lower critical temperature on heating. Not for nickel steel: its nickel term, from memory, has
 * the wrong sign for what all others find.
 *
 * <p>Ac1 = 723 - 7.08 Mn + 37.7 Si + 18.1 Cr + 44.2 Mo + 8.95 Ni + 50.1 V + 21.7 Al + 3.18 W + 297
 * S - 11.5 C Si - 14 Mn Si - 3.1 Si Cr - 57.9 C Mo - 15.5 Mn Mo - 5.28 C Ni - 6 Mn Ni + 6.77 Si Ni
 * - 0.8 Cr Ni - 27.4 C V + 30.8 Mo V - 0.84 Cr^2 - 3.46 Mo^2 - 0.46 Ni^2 - 28 V^2 (and - 830 N,
 * which an analysis does not name)
 *
 * <p>Ac1 in C, elements in wt%.
 *
 * <p>O.G. Kasatkin, B.B. Vinokur, V.L. Pilyushenko, Met. Sci. Heat Treat. 26 (1984) 27-31; from
 * memory.
 *
 * <p>Range: as {@link Kasatkin1984Ac3}, but nickel beyond 0.3 % is reported as outside it.
 *
 * <p>Stated error: residual deviation 10.8 C, from memory.
 */
public final class Kasatkin1984Ac1 implements CriticalTemperature {
  private final Coefficients k;
  private final Correlation correlation;

  public Kasatkin1984Ac1(Coefficients k) {
    this.k = k;
    this.correlation =
        k.describe("Ac1", "C", Kasatkin.ranges(0.3), "residual deviation 10.8 C, from memory");
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  @Override
  public double celsius(Composition c) {
    Composition at = Kasatkin.capped(c);
    return k.get("constant")
        + k.linear(at, MN, SI, CR, MO, NI, V, AL, W, S)
        + k.product(at, C, SI, MO, NI, V)
        + k.product(at, MN, SI, MO, NI)
        + k.product(at, SI, CR, NI)
        + k.product(at, CR, NI, CR)
        + k.product(at, MO, V, MO)
        + k.product(at, NI, NI)
        + k.product(at, V, V);
  }
}
