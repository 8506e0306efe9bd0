package seamsoak.billet;

import java.util.Optional;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;

/**
 * From when a line counts as visible.
 *
 * @param dip carbon missing at the seam, by weight, if stated
 * @param width of the line on the face, if stated
 */
public record Visible(Optional<Percent> dip, Optional<Length> width) {
  /** The dip stated, or the default. */
  public Percent dipTaken() {
    return dip.orElse(Defaults.VISIBLE_DIP);
  }

  /** The width stated, or the default. */
  public Length widthTaken() {
    return width.orElse(Defaults.VISIBLE_WIDTH);
  }
}
