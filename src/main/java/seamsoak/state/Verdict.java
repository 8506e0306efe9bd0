package seamsoak.state;

import java.util.Optional;

/**
 * Whether a line shows.
 *
 * @param contrast K in the likely case: it shows from 1 on
 * @param low 10 % of the cases tried have less; empty where there are none
 * @param high 90 % of them have less
 * @param sharePct in how many of a hundred such billets an eye sees it
 * @param verdict what to say
 */
public record Verdict(
    double contrast,
    Optional<Double> low,
    Optional<Double> high,
    Optional<Double> sharePct,
    Sure verdict) {
  private static final double MOST_PCT = 90;
  private static final double LEAST_PCT = 10;

  /** How sure it is. */
  public enum Sure {
    /** It shows, in nine of ten such billets or more. */
    SHOWS,
    /** It may show. */
    MAY_SHOW,
    /** It does not show, in nine of ten or more. */
    CLEAR
  }

  /** Of the likely case alone. */
  public static Verdict of(double contrast) {
    return new Verdict(
        contrast,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        contrast >= 1 ? Sure.SHOWS : Sure.CLEAR);
  }

  /** As it was seen. */
  public Verdict seen(boolean shows) {
    return new Verdict(
        contrast, low, high, Optional.of(shows ? 100.0 : 0), shows ? Sure.SHOWS : Sure.CLEAR);
  }

  /** Whether it shows, or else whether the likely case does. */
  public boolean likely() {
    return verdict == Sure.SHOWS || verdict == Sure.MAY_SHOW && contrast >= 1;
  }

  /** With what the cases tried say. */
  public static Verdict of(double contrast, double low, double high, double sharePct) {
    return new Verdict(
        contrast,
        Optional.of(low),
        Optional.of(high),
        Optional.of(sharePct),
        sharePct >= MOST_PCT ? Sure.SHOWS : sharePct <= LEAST_PCT ? Sure.CLEAR : Sure.MAY_SHOW);
  }
}
