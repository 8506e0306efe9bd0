/**
 * Heat in time and in a section. A planned heat, a soak, a cycle of the schedule, what a kiln is
 * set to and the line of a chart are all one thing, the {@link HeatCurve}. A section heats and
 * cools by conduction along its thickness ({@link SectionModel}).
 *
 * <p>It uses {@code numeric} alone. What a temperature does to metal is said above it; heat
 * content, conductivity and films come in as laws ({@link HeatLaw}, {@link FaceLaw}). Read {@link
 * HeatCurve} first.
 */
package seamsoak.heat;
