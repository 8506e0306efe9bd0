package seamsoak.billet;

import java.util.Optional;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/**
 * One stay in the fire, or several alike.
 *
 * @param at temperature of the fire
 * @param hold time at it, counted from when the core has reached it
 * @param times how many alike, one after the other
 * @param rise time for the core to come up, if stated
 * @param cool how it cools afterwards, if stated
 */
public record Heat(
    Temperature at, TimeSpan hold, int times, Optional<TimeSpan> rise, Optional<Cooling> cool) {
  /** The rise stated, or the default. */
  public TimeSpan riseTaken() {
    return rise.orElse(Defaults.RISE);
  }

  /** The cooling stated, or the default. */
  public Cooling coolTaken() {
    return cool.orElse(Defaults.COOL);
  }
}
