/**
 * Temperature against time. A planned heat, a soak, a cycle of the schedule, what a kiln is set to
 * and the line of a chart are all one thing, the {@link HeatCurve}.
 *
 * <p>It uses no other package. What a temperature does to metal is said above it.
 */
package seamsoak.heat;
