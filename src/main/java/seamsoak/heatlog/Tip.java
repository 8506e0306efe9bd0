package seamsoak.heatlog;

/** Where the tip of a thermocouple was. */
public enum Tip {
  /** In a hole of the piece: what it reads is the piece. */
  STEEL,
  /** On its face: it sees the fire too. */
  SURFACE,
  /** In the air of the kiln, which the piece lags behind. */
  AIR
}
