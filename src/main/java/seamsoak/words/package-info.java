/**
 * The sentences of an answer, in the units that it is shown in; the only place that writes prose of
 * what was decided elsewhere. Nothing is decided here.
 *
 * <p>One small record for each subject. What JSON says, in metric units and with its kind beside
 * it, is put together in {@link Statement}.
 */
package seamsoak.words;
