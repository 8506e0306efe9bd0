package seamsoak.billet;

import java.util.Optional;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;

/**
 * From when a line counts as visible.
 *
 * @param dip carbon missing at the seam, by weight, if stated
 * @param width of the line on the face, if stated; an old key that decides no more
 */
public record Visible(Optional<Percent> dip, Optional<Length> width) {
  /** The dip stated, or the default. */
  public Percent dipTaken() {
    return dip.orElse(Defaults.VISIBLE_DIP);
  }
}
