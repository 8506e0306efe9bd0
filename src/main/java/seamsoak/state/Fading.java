package seamsoak.state;

import java.util.OptionalDouble;

/**
 * How much is left of what fades, and when. The logarithm of it falls nearly straight in time, so
 * that a few long steps of the solver tell well when a level was passed between them.
 *
 * @param seconds since the start
 * @param logLeft natural logarithm of what is left
 */
public record Fading(double seconds, double logLeft) {
  public static Fading seen(double seconds, double left) {
    return new Fading(seconds, Math.log(left));
  }

  /**
   * When that much was left, between the moment before and this one, by the parabola through these
   * and an earlier one; straight where the earlier one is no use. Empty when it was not passed.
   */
  public OptionalDouble secondsAt(double left, Fading earlier, Fading before) {
    double log = Math.log(left);
    if (!(logLeft < log && log < before.logLeft && Double.isFinite(logLeft))) {
      return OptionalDouble.empty();
    }
    double perLog = (seconds - before.seconds) / (logLeft - before.logLeft);
    double straight = before.seconds + perLog * (log - before.logLeft);
    if (!(earlier.logLeft > before.logLeft)) {
      return OptionalDouble.of(straight);
    }
    double perLogEarlier = (before.seconds - earlier.seconds) / (before.logLeft - earlier.logLeft);
    double bend = (perLog - perLogEarlier) / (logLeft - earlier.logLeft);
    // time goes on as it fades, however far apart the three are
    double most = Math.abs(perLog / (logLeft - before.logLeft));
    return OptionalDouble.of(
        straight
            + Math.max(-most, Math.min(most, bend)) * (log - before.logLeft) * (log - logLeft));
  }
}
