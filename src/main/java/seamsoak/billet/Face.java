package seamsoak.billet;

/** The outer face on which the pattern will be looked at. */
public enum Face {
  /** Square to the thickness. */
  TOP,
  /** Square to the width. */
  SIDE,
  /** Square to the length. */
  END
}
