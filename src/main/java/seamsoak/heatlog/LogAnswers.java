package seamsoak.heatlog;

import java.util.Optional;

/**
 * What was told beside a log, each part only where the log does not say it itself.
 *
 * @param column name or number of the one that reads the piece
 * @param scale of its readings
 * @param timeUnit of its times
 * @param intervalSeconds between rows
 * @param mark before decimals
 */
public record LogAnswers(
    Optional<String> column,
    Optional<Scale> scale,
    Optional<TimeUnit> timeUnit,
    Optional<Double> intervalSeconds,
    Optional<DecimalMark> mark) {
  /** Nothing told. */
  public static final LogAnswers NONE =
      new LogAnswers(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
