package seamsoak.source;

import java.util.List;

/**
 * A number with its band, its source and the ranges it exceeded.
 *
 * @param value the estimate
 * @param low lower end of the band, same unit
 * @param high upper end of the band, same unit
 * @param source key of the source
 * @param exceeded ranges left, empty when all held
 */
public record Estimate(
    double value, double low, double high, String source, List<Exceeded> exceeded) {
  public Estimate {
    exceeded = List.copyOf(exceeded);
  }
}
