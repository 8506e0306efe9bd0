package seamsoak.billet;

/** Which pieces of a restack are turned a quarter about their length. */
public enum Turn {
  NONE,
  /** Every other one, as on a checkerboard. */
  ALTERNATE,
  ALL
}
