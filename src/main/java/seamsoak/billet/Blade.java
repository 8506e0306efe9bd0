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
 * @param length from tip to heel, if stated
 * @param bevel how far up it is ground to an edge, if stated
 * @param edge how thick the edge goes into the quench, if stated
 * @param hardness wanted at the edge, if stated
 * @param cuts the steel that cuts, if stated
 */
public record Blade(
    Optional<Length> thickness,
    Optional<Length> width,
    Optional<Length> length,
    Optional<Bevel> bevel,
    Optional<Length> edge,
    Optional<Hardness> hardness,
    Optional<Steel> cuts) {
  /** How far up from the edge a blade is ground thinner when it goes into the quench. */
  public enum Bevel {
    /** Not at all: a flat bar. */
    NONE,
    /** Part of the way to the spine. */
    HALF,
    /** From the spine on. */
    FULL
  }

  /** Nothing stated. */
  public static final Blade UNSTATED =
      new Blade(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** The hardness stated, or the default. */
  public Hardness hardnessTaken() {
    return hardness.orElse(Defaults.HARDNESS);
  }
}
