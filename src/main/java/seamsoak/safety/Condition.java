package seamsoak.safety;

import java.util.Locale;
import java.util.Set;
import seamsoak.billet.Coating;
import seamsoak.property.hardening.Quenchant;

/**
 * What must hold in a shop for a caution to arise. Who cannot tell whether a condition holds takes
 * it to hold: a caution too many costs a glance.
 */
public enum Condition {
  /** The fire burns gas from a cylinder. */
  GAS_FORGE,
  /** The heat is taken in an electric kiln. */
  KILN,
  /** The shop is closed, or joined to a house. */
  INDOORS,
  /** A sheet is wrapped about the work. */
  JACKET,
  /** The jacket's sheet is not known to be bare. */
  COATED_JACKET,
  /** The stack is welded shut in a box. */
  SEALED_CAN,
  /** Borax or another flux is used. */
  FLUX,
  /** Some steel in the work is alloyed with nickel. */
  NICKEL,
  /** Some steel has so much chromium, about 1 % and up, that its oxide hinders welding. */
  CHROMIUM,
  /** Some steel hardens when it cools in air. */
  AIR_HARDENING,
  /** The work is hotter than 1100 C. */
  HOT,
  /** The work is as hot as the handbook has one of its steels burn, or hotter. */
  BURNING,
  /** The bath is oil of any kind. */
  OIL,
  /** The oil is a vegetable one; {@link #OIL} holds too. */
  VEGETABLE_OIL,
  /** The bath is water or brine. */
  WATER,
  /** The bath is molten salt. */
  SALT,
  /** The work is buried in vermiculite or ash. */
  BURIED,
  /** The steel is cooled in liquid nitrogen or dry ice. */
  SUB_ZERO,
  /** Acids other than ferric chloride strip scale. */
  ACID;

  /** Its word in tables, such as {@code gas-forge}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The conditions that a jacket of such sheet brings about. */
  public static Set<Condition> ofJacket(Coating coating) {
    return coating == Coating.NONE ? Set.of(JACKET) : Set.of(JACKET, COATED_JACKET);
  }

  /** Conditions that a bath brings about. */
  public static Set<Condition> ofBath(Quenchant q) {
    return switch (q.kind()) {
      case OIL -> Set.of(OIL);
      case VEGETABLE_OIL -> Set.of(OIL, VEGETABLE_OIL);
      case SALT -> Set.of(SALT);
      case WATER -> Set.of(WATER);
      case INSULATION -> Set.of(BURIED);
      case AIR, PLATES -> Set.of();
    };
  }
}
