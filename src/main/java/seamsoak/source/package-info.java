/**
 * How well a number is known: sources, how their numbers reached us, the ranges they vouch for, and
 * what is to be said when a range is left.
 *
 * <p>It may use {@code unit} and {@code data}. It holds no number of the trade itself.
 *
 * <p>Two kinds of remark are kept apart and never share a word: {@link Exceeded} (a formula was
 * used outside its range) and {@link Caution} (danger in the shop).
 *
 * <p>Read {@link Estimate} first: a value with its band, its source and the ranges it left. {@link
 * Standing} says how well a number is known to be what its source prints.
 */
package seamsoak.source;
