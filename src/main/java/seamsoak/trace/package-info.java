/**
 * What the numbers of an answer rest on: sources, standings, ranges left.
 *
 * <p>It is told, not recorded while an answer is worked out. A recording would name whatever takes
 * its coefficients when it is made, and searches that end up in no answer; and a range is left by
 * some steel at some heat, which a kernel does not know: histories ask it at temperatures by
 * chance, of analyses without a name.
 *
 * <p>{@code SourcesTest} moves at once all numbers that an answer does not name, and fails when the
 * answer sways. Read {@link Tracer} first.
 */
package seamsoak.trace;
