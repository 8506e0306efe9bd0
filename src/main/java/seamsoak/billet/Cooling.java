package seamsoak.billet;

/** How hot metal is left to cool. */
public enum Cooling {
  AIR,
  FURNACE,
  QUENCH
}
