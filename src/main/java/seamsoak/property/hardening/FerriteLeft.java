package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;

/**
 * Hardness of a steel quenched from below Ac3, where ferrite is left beside its martensite.
 *
 * <p>HRC between (1 - f) HRC(martensite) and that of (1 - f) HV(martensite) + f HV(ferrite), taken
 * in the middle
 *
 * <p>f share of ferrite; HV and HRC by {@link AstmE140}.
 *
 * <p>Our judgement: mixed by Vickers hardness it comes out harder than a blade with soft spots is
 * found, mixed by Rockwell softer; the two ends are the band.
 *
 * <p>Range: a few tens of percent of ferrite; what is hardly more than ferrite lies below the scale
 * and counts as 10 HRC. Stated error: none.
 */
public final class FerriteLeft extends PublishedFormula {
  /** Softer than this Rockwell C says nothing, HRC. */
  private static final double SOFTEST = 10;

  private final AstmE140 e140;

  FerriteLeft(Coefficients k, AstmE140 e140) {
    super(k, "hardness with ferrite left", "HRC", List.of(), "none, judgement");
    this.e140 = e140;
  }

  /** Hardness with that share of ferrite, of what is so hard without. */
  public Estimate hrc(Estimate without, double share) {
    if (share <= 0) {
      return without;
    }
    double softer = (1 - share) * without.low();
    double value = (mixed(without.value(), share) + (1 - share) * without.value()) / 2;
    double harder = mixed(without.high(), share);
    return new Estimate(
        Math.max(SOFTEST, value),
        Math.max(SOFTEST, Math.min(value, Math.min(softer, harder))),
        Math.max(SOFTEST, Math.max(value, Math.max(softer, harder))),
        k.source(),
        without.exceeded());
  }

  private double mixed(double hrc, double share) {
    return e140.hrc((1 - share) * e140.vickers(hrc) + share * k.get("ferrite"));
  }
}
