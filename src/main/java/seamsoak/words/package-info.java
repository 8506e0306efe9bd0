/**
 * The sentences of an answer, in the units that it is shown in; the only place that writes prose of
 * what was decided elsewhere. Nothing is decided here.
 *
 * <p>One small record for each subject. What JSON says is put together in {@code words.told}.
 */
package seamsoak.words;
