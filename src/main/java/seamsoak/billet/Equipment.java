package seamsoak.billet;

import java.util.Optional;

/**
 * What the shop has; what is not stated is empty.
 *
 * @param forge what its fire burns
 * @param kiln the kiln, or {@link Kiln#NONE}
 * @param salt molten salt to heat in
 * @param cold what there is to cool below room temperature
 * @param shop how closed it is
 * @param descale how scale is taken off
 */
public record Equipment(
    Optional<Forge> forge,
    Optional<Kiln> kiln,
    Optional<Salt> salt,
    Optional<Cold> cold,
    Optional<Room> shop,
    Optional<Descale> descale) {
  /** A kiln's limit is a round number, C. */
  private static final double KILN_MARGIN = 0.5;

  /** Nothing stated. */
  public static final Equipment UNSTATED =
      new Equipment(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** What a forge burns. */
  public enum Forge {
    GAS,
    COAL,
    INDUCTION,
    NONE
  }

  /** A bath of molten salt to heat blades in. */
  public enum Salt {
    NONE,
    NEUTRAL,
    NITRATE
  }

  /** What cools below room temperature. */
  public enum Cold {
    NONE,
    DRY_ICE,
    LIQUID_NITROGEN
  }

  /** How fumes can leave. */
  public enum Room {
    CLOSED,
    OPEN
  }

  /** How scale is taken off. */
  public enum Descale {
    GRINDING,
    ACID
  }

  /** The forge stated, or the default. */
  public Forge forgeTaken() {
    return forge.orElse(Forge.GAS);
  }

  /** The kiln stated, or the default one. */
  public Kiln kilnTaken() {
    return kiln.orElse(Kiln.UNSTATED);
  }

  /** Whether the shop has a kiln that holds so much. */
  public boolean kilnReaches(double celsius) {
    return kilnTaken().there() && celsius <= kilnTaken().highestTaken().celsius() + KILN_MARGIN;
  }

  /** The salt stated, or the default. */
  public Salt saltTaken() {
    return salt.orElse(Salt.NONE);
  }

  /** The cold bath stated, or the default. */
  public Cold coldTaken() {
    return cold.orElse(Cold.NONE);
  }

  /** The room stated, or the careful default. */
  public Room shopTaken() {
    return shop.orElse(Room.CLOSED);
  }

  /** The way stated, or the default. */
  public Descale descaleTaken() {
    return descale.orElse(Descale.GRINDING);
  }
}
