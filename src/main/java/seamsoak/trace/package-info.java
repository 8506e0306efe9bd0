/**
 * What the numbers of an answer rest on: sources, standings, ranges left.
 *
 * <p>{@code SourcesTest} moves every number by a tenth and holds the answers that sway against
 * this. Read {@link Tracer} first.
 */
package seamsoak.trace;
