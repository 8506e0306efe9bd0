package seamsoak.billet;

/** What a jacket's sheet carries on its surface; zinc and chromium make it a danger in the fire. */
public enum Coating {
  NONE,
  GALVANIZED,
  PLATED,
  PAINTED,
  UNKNOWN
}
