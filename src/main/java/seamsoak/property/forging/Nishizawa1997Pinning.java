package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Size that austenite grains do not outgrow while cementite is left undissolved between them.
 *
 * <p>R = 4 r / (3 f^(2/3))
 *
 * <p>R mean radius of the grains, r that of the particles, f their share by volume, taken as that
 * by weight: cementite and austenite weigh nearly the same. The mean intercept is pi R / 2, of
 * grains taken for circles in the plane that is looked at. Lengths in m.
 *
 * <p>T. Nishizawa, I. Ohnuma, K. Ishida, Mater. Trans. JIM 38 (1997) 950-956, the abstract seen: a
 * mend of Zener's relation, whose f has the exponent 1, which they found to agree with the
 * austenite grains of steels of much carbon and manganese.
 *
 * <p>Range: not at hand; 700 to 1100 C, judgement. Stated error: none at hand. The radius is our
 * judgement, that of stock as the mill anneals it: finer carbide, as after normalizing, holds finer
 * grains.
 */
public final class Nishizawa1997Pinning extends PublishedFormula {
  /** Carbon of cementite, wt%. */
  private static final double CEMENTITE_PCT = 6.67;

  public Nishizawa1997Pinning(Coefficients k) {
    super(
        k,
        "austenite grain size beside cementite",
        "m",
        List.of(Correlation.celsiusRange(700, 1100)),
        "none at hand");
  }

  /**
   * The mean intercept that grains do not outgrow, m; infinite without cementite.
   *
   * @param carbonPct that is left in cementite, wt% of the steel
   */
  public double metres(double carbonPct) {
    double share = Math.max(0, carbonPct) / CEMENTITE_PCT;
    return Math.PI / 2 * k.get("factor") * k.get("radius") / Math.pow(share, k.get("exponent"));
  }
}
