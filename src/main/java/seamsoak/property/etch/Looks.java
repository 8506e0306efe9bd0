package seamsoak.property.etch;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Whether a line of contrast K is seen, and how plain it looks.
 *
 * <p>P(seen) = 1 / (1 + (t / K)^(1/s)), P(plain) the same of K / r
 *
 * <p>t is the contrast from which this eye sees a line in this state: its logarithm is normal about
 * 0, by the eye and by how the state was made and etched. r is 2, or 1.45 times more or less.
 *
 * <p>A line may also be something else than carbon, which no soak changes: that has a contrast of
 * its own, lognormal, and the stronger of the two is seen.
 *
 * <p>Judgement, all of it. Range: any contrast. Stated error: none.
 */
public final class Looks extends PublishedFormula {
  /**
   * Beyond that no line is, nor is any finer than one in so many of it: widths that say nothing.
   */
  private static final double WIDEST_RATIO = 100;

  private final double steepness = -1 / k.get("spread");

  public Looks(Coefficients k) {
    super(k, "whether a line is seen", "1", List.of(), "none, judgement");
  }

  /** Chance that a contrast so many times the eye's own is seen. */
  public double seen(double over) {
    return over <= 0 ? 0 : 1 / (1 + Math.pow(over, steepness));
  }

  /** The same, where some looks are told wrong. */
  public double told(double chance) {
    double lapse = k.get("lapse");
    return (1 - lapse) * chance + lapse / 3;
  }

  /** How many times what is seen at all is plain: less, usual, more, each as likely. */
  public double[] plain() {
    double step = k.get("plain step");
    return new double[] {k.get("plain") / step, k.get("plain"), k.get("plain") * step};
  }

  /** How well a width told fits one that should be there, by the logarithm of their ratio. */
  public double widthFits(double lnRatio) {
    double sigma = k.get("width error");
    double gross = k.get("width gross");
    double z = lnRatio / sigma;
    return (1 - gross) * Math.exp(-z * z / 2) / (sigma * Math.sqrt(2 * Math.PI))
        + gross / Math.log(WIDEST_RATIO);
  }

  /** One sigma of ln t from eye to eye. */
  public double eyeSigma() {
    return k.get("eye");
  }

  /** One sigma of ln t from one cooling and etch to the next, not hardened. */
  public double cooledSigma() {
    return k.get("cooled");
  }

  /** The same hardened. */
  public double hardenedSigma() {
    return k.get("hardened");
  }

  /** Share of billets with a line that is not carbon. */
  public double notCarbon() {
    return k.get("not carbon");
  }

  /** Contrast of such a line, so many sigmas from its median. */
  public double notCarbonContrast(double sigmas) {
    return k.get("not carbon contrast") * Math.exp(sigmas * k.get("not carbon sigma"));
  }
}
