package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;

/**
 * Hardness of hardened, untempered steel: martensite with some austenite left in it.
 *
 * <p>HV = (1 - f) HV(martensite) + f 250; martensite is that of {@link AstmA255Hardness} up to 0.60
 * %C, then bends over without a corner to 70 HRC at 1.0 %C and stays there
 *
 * <p>f share of retained austenite; carbon is what is dissolved when quenched; HV and HRC by {@link
 * AstmE140}.
 *
 * <p>The part above 0.60 %C, where the standard's polynomial ends and austenite begins to count,
 * and the hardness of austenite are our judgement: with them the handbook figures of high-carbon
 * steels and the measured ones come out within 2 HRC. Martensite without austenite is harder than
 * any steel is measured as quenched.
 *
 * <p>What is soft follows from the same curve: a steel that comes to less than 50 HRC does not
 * harden at all; a skin is soft where it stays below 58 HRC, which 0.44 %C gives, or 2 HRC below
 * the metal under it where that is no harder itself. All three are judgement.
 *
 * <p>Range: 0.10 to 1.5 %C.
 *
 * <p>Band: 2 HRC above and 3 below, judgement: a quench seldom leaves all martensite.
 */
public final class AsQuenchedHardness extends PublishedFormula {
  private final AstmA255Hardness a255;
  private final AstmE140 e140;

  public AsQuenchedHardness(Coefficients k, AstmA255Hardness a255, AstmE140 e140) {
    super(
        k,
        "hardness as quenched",
        "HRC",
        List.of(Correlation.range(C, 0.1, 1.5)),
        "2 HRC above, 3 below, judgement");
    this.a255 = a255;
    this.e140 = e140;
  }

  /** Hardness of martensite without any austenite, HRC. */
  public double martensiteHrc(double dissolvedCarbonPct) {
    double from = k.get("polynomial to");
    if (dissolvedCarbonPct <= from) {
      return a255.martensiteHrc(dissolvedCarbonPct);
    }
    double span = k.get("level from") - from;
    double s = Math.min(1, (dissolvedCarbonPct - from) / span);
    double start = a255.martensiteHrc(from);
    // a cubic: as steep as the polynomial at first, level at the end
    return start
        + s * s * (3 - 2 * s) * (k.get("level") - start)
        + s * (1 - s) * (1 - s) * span * a255.martensiteSlope(from);
  }

  /** As hard as steel with that much carbon is measured, its own austenite in it, HRC. */
  public double measuredHrc(double dissolvedCarbonPct) {
    return Math.min(k.get("hardest"), martensiteHrc(dissolvedCarbonPct));
  }

  /** Whether a fast enough quench makes a steel with that much carbon hard at all. */
  public boolean hardens(double carbonPct) {
    return martensiteHrc(carbonPct) >= k.get("hardens");
  }

  /**
   * As hard as a skin has to get so as not to be soft, HRC: as a blade's edge has to be, or a
   * little less than the metal below, where that is no harder itself.
   *
   * @param belowPct carbon of the metal below, wt%
   */
  public double enoughHrc(double belowPct) {
    return Math.min(k.get("enough"), martensiteHrc(belowPct) - k.get("below core"));
  }

  /** Hardness of martensite with that share of austenite, HRC. */
  public double hrc(double dissolvedCarbonPct, double retainedShare) {
    double hard = e140.vickers(martensiteHrc(dissolvedCarbonPct));
    return e140.hrc((1 - retainedShare) * hard + retainedShare * k.get("austenite"));
  }

  /** The same with its band. */
  public Estimate estimate(double dissolvedCarbonPct, double retainedShare) {
    double hrc = hrc(dissolvedCarbonPct, retainedShare);
    List<Exceeded> left = new ArrayList<>(exceeded(Composition.of(Map.of(C, dissolvedCarbonPct))));
    return new Estimate(
        hrc, hrc - k.get("band below"), hrc + k.get("band above"), k.source(), left);
  }
}
