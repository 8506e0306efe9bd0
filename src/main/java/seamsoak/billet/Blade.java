package seamsoak.billet;

import java.util.Optional;
import seamsoak.steel.Steel;
import seamsoak.unit.Hardness;
import seamsoak.unit.Length;

/**
 * What the billet becomes, as far as its heat treatment has to know.
 *
 * @param thickness at the spine when it goes into the quench, if stated
 * @param width from spine to edge, if stated
 * @param hardness wanted at the edge, if stated
 * @param edge the steel that cuts, if stated
 */
public record Blade(
    Optional<Length> thickness,
    Optional<Length> width,
    Optional<Hardness> hardness,
    Optional<Steel> edge) {
  /** Nothing stated. */
  public static final Blade UNSTATED =
      new Blade(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** The hardness stated, or the default. */
  public Hardness hardnessTaken() {
    return hardness.orElse(Defaults.HARDNESS);
  }
}
