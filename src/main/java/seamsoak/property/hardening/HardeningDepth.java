package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;
import seamsoak.source.Range;

/**
 * Hardness where a quench is nearly fast enough.
 *
 * <p>With r the ideal diameter of the steel over the one that the place needs ({@link
 * GrossmannCriterion}): full hardness from r = 1.4, that of half martensite at 0.85, that of what
 * did not harden up to 0.45, straight between them; hard to the middle from 1.15 on, where some 5
 * HRC are missing. What did not harden in a bath is fine pearlite, 8 HRC harder than normalized
 * bars of an inch, whatever the section: bars of half an inch to two show no more than that. At the
 * face the severity counts three times in water, half again in oil: there the steam is gone sooner
 * than at the middle's half time.
 *
 * <p>By the criterion itself half martensite is at r = 1. The cores of handbook bars have it
 * between 0.6 (plain steel in oil) and 1.3 (thick alloy steel in oil); handbook limits of plain
 * blades in oil lie at 0.73 to 0.88; bars of L6 that smiths found hard after cooling in air at
 * about 0.5. So all numbers here are judgement, placed by bars remembered from handbooks.
 *
 * <p>Range: r from 0 to 100.
 *
 * <p>Band: r 35 % lower to 35 % higher.
 */
public final class HardeningDepth extends PublishedFormula {
  /** How far into a section it hardens. */
  public enum Depth {
    /** Hard to the middle. */
    THROUGH,
    /** The middle may stay softer. */
    NEARLY,
    /** A hard shell on a middle that stays soft. */
    SHELL,
    /** Not even the face hardens. */
    NOT
  }

  private final String source;

  public HardeningDepth(Coefficients k) {
    super(
        k,
        "hardness of a slower quench",
        "HRC",
        List.of(new Range("margin", "1", 0, 100)),
        "margin 35 % either way, judgement");
    this.source = k.source();
  }

  /** How far it hardens, from the margins r at the middle and the face. */
  public Depth depth(double middle, double face) {
    if (middle >= k.get("through")) {
      return Depth.THROUGH;
    }
    if (middle >= k.get("half")) {
      return Depth.NEARLY;
    }
    return face >= k.get("half") ? Depth.SHELL : Depth.NOT;
  }

  /** Whether something of a section hardens in still air, from the margin at its middle. */
  public boolean mayHardenInAir(double margin) {
    return margin >= leastMarginInAir();
  }

  /** Margin at the middle from which something of a section hardens in still air. */
  public double leastMarginInAir() {
    return k.get("air");
  }

  /** What the severity of a quenchant counts at the face. */
  public double severityAtFace(Quenchant.Kind kind, double severityPerInch) {
    return switch (kind) {
      case WATER -> k.get("water at face") * severityPerInch;
      case OIL, VEGETABLE_OIL -> k.get("oil at face") * severityPerInch;
      case AIR, INSULATION, PLATES, SALT -> severityPerInch;
    };
  }

  /**
   * Hardness of what did not harden in a quenchant.
   *
   * @param barHrc of normalized bars
   * @param airCooledHrc of the section cooled in air
   */
  public double softHrc(Quenchant.Kind kind, double barHrc, double airCooledHrc) {
    double inAir = Math.max(0, airCooledHrc);
    return switch (kind) {
      case AIR, INSULATION -> inAir;
      case OIL, VEGETABLE_OIL, PLATES, SALT, WATER ->
          Math.max(inAir, barHrc + k.get("quicker pearlite"));
    };
  }

  /** Margin from which a section is hard to the middle. */
  public double throughMargin() {
    return k.get("through");
  }

  /** Margin from which a middle is half hard. */
  public double halfMargin() {
    return k.get("half");
  }

  /** Hardness at a margin, between that of all, half and no martensite. */
  public Estimate hrc(double margin, Estimate all, double halfHrc, double noneHrc) {
    return new Estimate(
        at(margin, all.value(), halfHrc, noneHrc),
        at(margin * (1 - k.get("doubt")), all.low(), halfHrc, noneHrc),
        at(margin * (1 + k.get("doubt")), all.high(), halfHrc, noneHrc),
        source,
        all.exceeded());
  }

  private double at(double margin, double all, double halfHrc, double noneHrc) {
    double middle = Math.min(all, halfHrc);
    if (margin >= k.get("full")) {
      return all;
    }
    if (margin >= k.get("half")) {
      return middle + (all - middle) * (margin - k.get("half")) / (k.get("full") - k.get("half"));
    }
    double share = Math.max(0, (margin - k.get("none")) / (k.get("half") - k.get("none")));
    double soft = Math.min(middle, noneHrc);
    return soft + (middle - soft) * share;
  }
}
