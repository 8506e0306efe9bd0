package seamsoak.source;

/**
 * A published source or a stated lack of one.
 *
 * @param key short key that tables refer to, such as {@code agren1986}
 * @param citation the paper, handbook or standard, as a reader would look it up
 * @param standing how its numbers reached us
 * @param note what of it was seen, what it is good for; may be empty
 */
public record Source(String key, String citation, Standing standing, String note) {
  public Source(String key, String citation, Standing standing) {
    this(key, citation, standing, "");
  }
}
