/**
 * What an etch makes of metal: the free ferrite that a cooling leaves, by the carbon that is there,
 * and how white that looks; and martensite of other carbon.
 *
 * <p>Read {@link Etching} first, then {@link FreeFerrite}.
 *
 * <p>Austenite that cools forms ferrite until pearlite starts and takes the rest (Hultgren 1947,
 * Zener 1946, Hillert 1962, from memory). When pearlite starts is known fairly well; when ferrite
 * does is not. So the share of ferrite is a band ({@link Band}): its middle is the lever at the
 * line of cementite run on to where pearlite starts, its low end has ferrite start late and its
 * high end early, and ferrite grow for as long as is then left.
 *
 * <p>Choices of ours: pearlite starts by the carbon of the layer, but no less than the eutectoid's
 * (ferrite has enriched what is left) and no more than 0.80 % (cementite has taken the rest).
 * Ferrite that a heat left undissolved counts. Where pearlite has not started by the end of a
 * cooling, the lever is taken there.
 */
package seamsoak.property.etch;
