package seamsoak.schedule;

/** What a steel consists of after a step. */
public enum Structure {
  /** Hard from still air. */
  AIR_HARDENED,
  /** Pearlite, and in still air perhaps martensite. */
  PERHAPS_AIR_HARDENED,
  /** Pearlite alone, or near enough. */
  PEARLITE,
  PEARLITE_AND_CARBIDE,
  PEARLITE_AND_FERRITE,
  FERRITE,
  /** Carbide in ferrite. */
  ANNEALED,
  /** Austenite at every heat. */
  UNCHANGING,
  HARD,
  /** The middle perhaps not. */
  HARD_MIDDLE_PERHAPS,
  /** At a thin edge; the middle not. */
  HARD_SHELL,
  NOT_HARDENED,
  /** It would harden by its own sheet, not from this heat. */
  NOT_FROM_THIS_HEAT,
  TEMPERED,
  /** At a thin edge; the middle never was hard. */
  TEMPERED_SHELL,
  /** Tempered with the others, and never hard. */
  SOFT
}
