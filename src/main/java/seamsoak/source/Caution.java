package seamsoak.source;

/**
 * A danger in the shop, said at the step where it arises.
 *
 * @param id short key
 * @param gravity what comes of not heeding it
 * @param statement one or two sentences for the smith
 * @param source key of what it rests on
 * @param standing how well that is known
 */
public record Caution(
    String id, Gravity gravity, String statement, String source, Standing standing) {}
