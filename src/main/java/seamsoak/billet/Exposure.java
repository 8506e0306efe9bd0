package seamsoak.billet;

/** What a face meets in the fire. */
public enum Exposure {
  /** Bare to the fire. */
  OPEN,
  /** Under flux, oil or paint, or inside a closed gap: the fire reaches it in part. */
  COVERED,
  /** No carbon crosses it, as in a closed can. */
  SEALED
}
