package seamsoak.property.correlation;

import java.util.List;
import seamsoak.source.Range;

/** A correlation with a type of its own: the coefficients of the table, and what is said of it. */
public abstract class PublishedFormula implements Published {
  /** Its coefficients. A kernel that is asked in a loop takes out of them what it needs. */
  protected final Coefficients k;

  private final Correlation correlation;

  /** See {@link Correlation} for what is said. */
  protected PublishedFormula(
      Coefficients k, String gives, String unit, List<Range> validity, String statedError) {
    this.k = k;
    this.correlation = k.describe(gives, unit, validity, statedError);
  }

  @Override
  public final Correlation correlation() {
    return correlation;
  }
}
