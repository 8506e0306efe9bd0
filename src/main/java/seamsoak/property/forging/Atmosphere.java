package seamsoak.property.forging;

/** What steel is held in. */
public enum Atmosphere {
  /** Nobody said. */
  UNSTATED,
  /** Dry or still air of a kiln: the scale grows slowly and lies close. */
  STILL_AIR,
  /** Air with steam in it: the scale is porous. */
  MOIST_AIR,
  /** What a flame leaves: steam and carbon dioxide. */
  FLAME
}
