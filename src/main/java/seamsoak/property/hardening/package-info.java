/**
 * Hardening and tempering: from which heat, in which quench, how deep and how hard, and what a
 * temper leaves.
 *
 * <p>How a section cools is not here but in {@code property.section}. Read {@link Hardening} first.
 */
package seamsoak.property.hardening;
