package seamsoak.source;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

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

  /** What follows from it by a function that never falls. */
  public Estimate map(DoubleUnaryOperator rising) {
    return new Estimate(
        rising.applyAsDouble(value),
        rising.applyAsDouble(low),
        rising.applyAsDouble(high),
        source,
        exceeded);
  }

  /** How far the farther end of its band lies from it. */
  public double giveOrTake() {
    return Math.max(high - value, value - low);
  }
}
