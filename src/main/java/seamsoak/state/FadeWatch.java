package seamsoak.state;

import java.util.OptionalDouble;

/** Watches something fade, sight by sight, until it has fallen to a level. */
public final class FadeWatch {
  private final double level;
  private final double fromSeconds;
  private Fading earlier;
  private Fading before;

  /**
   * @param left of it at first
   * @param fromSeconds sights before that say nothing of how fast it fades afterwards
   */
  public FadeWatch(double level, double left, double fromSeconds) {
    this.level = level;
    this.fromSeconds = fromSeconds;
    this.before = Fading.seen(0, left);
    this.earlier = before;
  }

  /** When it fell to the level, if it has by now. */
  public OptionalDouble sees(double seconds, double left) {
    Fading now = Fading.seen(seconds, left);
    if (now.logLeft() <= Math.log(level)) {
      return OptionalDouble.of(now.secondsAt(level, earlier, before).orElse(seconds));
    }
    earlier = before.seconds() < fromSeconds ? now : before;
    before = now;
    return OptionalDouble.empty();
  }
}
