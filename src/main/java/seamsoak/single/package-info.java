/**
 * Answers without a billet: one steel, the skin of one steel after a heat, carbon across the seam
 * of a repeating stack.
 *
 * <p>Nothing here knows a schedule. Read {@link SteelReport} first.
 */
package seamsoak.single;
