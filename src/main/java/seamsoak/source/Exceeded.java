package seamsoak.source;

/**
 * A remark that a formula was used outside the range its source states.
 *
 * @param correlation name of the correlation, author and year
 * @param range the range that was left
 * @param value the value that was used
 */
public record Exceeded(String correlation, Range range, double value) {}
