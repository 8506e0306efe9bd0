package seamsoak.billet;

import java.time.LocalDate;
import java.util.Optional;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/**
 * One stay in the fire that was done.
 *
 * @param on which day, if stated
 * @param how it went
 */
public record HeatDone(Optional<LocalDate> on, How how) {
  /** How a stay in the fire went. */
  public sealed interface How {}

  /** As it was planned. */
  public record AsPlanned() implements How {}

  /**
   * Otherwise than planned, as the smith wrote it down.
   *
   * @param at temperature of the fire
   * @param hold time at it, counted from when the core has reached it
   */
  public record Held(Temperature at, TimeSpan hold) implements How {}

  /** As a logger wrote it down. */
  public record Logged(LoggedCurve curve) implements How {}
}
