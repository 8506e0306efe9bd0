/**
 * What was decided, as JSON tells it: sentences in metric units, each with its kind beside it.
 *
 * <p>Read {@link Statement} first.
 */
package seamsoak.words.told;
