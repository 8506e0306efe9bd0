package seamsoak.billet;

import java.util.Optional;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;

/**
 * From when a line counts as visible: old keys that decide no more.
 *
 * @param dip carbon missing at the seam, by weight, if stated
 * @param width of the line on the face, if stated
 */
public record Visible(Optional<Percent> dip, Optional<Length> width) {
  /** Whether anything is stated. */
  public boolean stated() {
    return dip.isPresent() || width.isPresent();
  }
}
