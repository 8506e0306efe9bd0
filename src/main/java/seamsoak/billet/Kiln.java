package seamsoak.billet;

import java.util.Optional;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Temperature;

/**
 * An electric kiln with a controller.
 *
 * @param there whether there is one
 * @param highest hottest it goes, if stated
 * @param ramp fastest it climbs, if stated
 */
public record Kiln(boolean there, Optional<Temperature> highest, Optional<HeatingRate> ramp) {
  /** Nothing stated of it. */
  public static final Kiln UNSTATED = new Kiln(true, Optional.empty(), Optional.empty());

  /** No kiln in the shop. */
  public static final Kiln NONE = new Kiln(false, Optional.empty(), Optional.empty());

  /** The limit stated, or the default. */
  public Temperature highestTaken() {
    return highest.orElse(Defaults.KILN_HIGHEST);
  }

  /** The rate stated, or the default. */
  public HeatingRate rampTaken() {
    return ramp.orElse(Defaults.KILN_RAMP);
  }
}
