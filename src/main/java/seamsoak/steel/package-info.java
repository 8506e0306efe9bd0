/**
 * Steels as published: elements, analyses, the figures of each grade, what sheets disagree on.
 *
 * <p>It may use {@code unit}, {@code data} and {@code source}. It computes nothing from an
 * analysis: whatever is a formula belongs to {@code property}. A figure that was not published is
 * empty, never filled in here.
 *
 * <p>Read {@link Steel} first, then {@link SteelTable}, which finds one by name and says where each
 * figure comes from.
 */
package seamsoak.steel;
