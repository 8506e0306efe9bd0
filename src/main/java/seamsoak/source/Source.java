package seamsoak.source;

/**
 * A published source or a stated lack of one.
 *
 * @param key short key that tables refer to, such as {@code agren1986}
 * @param citation the paper, handbook or standard, as a reader would look it up
 * @param standing how its numbers reached us
 */
public record Source(String key, String citation, Standing standing) {}
