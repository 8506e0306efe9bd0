package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;

/**
 * Share of austenite that a quench leaves, between two published laws.
 *
 * <p>f = sqrt(f1 f2)
 *
 * <p>f1 by {@link VanBohemen2012Retained}, f2 by {@link KoistinenMarburger1959}.
 *
 * <p>Our judgement. Plain steels, as far as known, have what van Bohemen's rate gives; oil steels
 * with chromium or manganese that harden with carbide left have two to three times that, more than
 * Koistinen and Marburger's too: 52100 8 to 18 % from 816 to 871 C (measured, second-hand), O1 7 to
 * 10 % (from memory). A slower quench and austenite that is richer near carbide leave more; neither
 * is in any of the laws.
 *
 * <p>Range: that of both. Band: from 0.6 of the lower to twice the higher, judgement.
 */
public final class RetainedAustenite extends PublishedFormula {
  private final VanBohemen2012Retained byAnalysis;
  private final KoistinenMarburger1959 alike;

  RetainedAustenite(
      Coefficients k, VanBohemen2012Retained byAnalysis, KoistinenMarburger1959 alike) {
    super(k, "retained austenite, with its band", "1", List.of(), "its band, judgement");
    this.byAnalysis = byAnalysis;
    this.alike = alike;
  }

  /** Share of retained austenite after a quench to {@code quenchCelsius}. */
  public Estimate retained(Composition austenite, double msCelsius, double quenchCelsius) {
    double one = byAnalysis.retained(austenite, msCelsius, quenchCelsius);
    double other = alike.retained(msCelsius, quenchCelsius);
    return new Estimate(
        Math.sqrt(one * other),
        k.get("of the lower") * Math.min(one, other),
        Math.min(1, k.get("of the higher") * Math.max(one, other)),
        k.source(),
        byAnalysis.exceeded(austenite));
  }
}
