package seamsoak.property.hardening;

import java.util.OptionalDouble;
import seamsoak.source.Standing;

/**
 * Something to cool in.
 *
 * @param id key of the table
 * @param name what the smith calls it
 * @param kind what it is
 * @param speed how fast it is, in words of the table: slow, medium, fast, very fast
 * @param severityLow Grossmann's H at its slowest, 1/in
 * @param severity H to reckon with, 1/in
 * @param severityHigh H at its fastest, 1/in
 * @param useLowC bath no cooler than this, C
 * @param useHighC bath no hotter than this, C
 * @param flashC typical flash point, C; the label of the drum rules
 * @param source key of the source of H
 * @param standing how well H is known
 * @param note what else to know
 */
public record Quenchant(
    String id,
    String name,
    Kind kind,
    String speed,
    double severityLow,
    double severity,
    double severityHigh,
    OptionalDouble useLowC,
    OptionalDouble useHighC,
    OptionalDouble flashC,
    String source,
    Standing standing,
    String note) {
  private static final double ROOM_CELSIUS = 20;

  /** Middle of its range of use, room temperature where it has none, C. */
  public double bathCelsius() {
    double low = useLowC.orElse(useHighC.isPresent() ? ROOM_CELSIUS : Double.NaN);
    double high = useHighC.orElse(useLowC.orElse(Double.NaN));
    return Double.isNaN(low + high) ? ROOM_CELSIUS : (low + high) / 2;
  }

  /** What a quenchant is. */
  public enum Kind {
    AIR,
    PLATES,
    INSULATION,
    OIL,
    VEGETABLE_OIL,
    SALT,
    WATER;

    /** Of any origin. */
    public boolean isOil() {
      return this == OIL || this == VEGETABLE_OIL;
    }
  }
}
