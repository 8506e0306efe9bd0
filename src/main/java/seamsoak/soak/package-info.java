/**
 * The soak: what is left to clear, how long that takes at each temperature over the possible
 * histories of the billet, what was seen, what each option costs, and which one to take.
 *
 * <p>It does not know the schedule; who calls it hands it the curves to come and a grain function.
 * What it decides are records and enums ({@link SoakReason}, {@link SoakNote}); it writes no
 * sentence. Read {@link SoakAdvisor} first, then {@link Clearing}.
 *
 * <p>The soak is for the finished blade: minutes are told until no line shows hardened and
 * tempered. What shows as the billet has cooled and after the anneal ({@link ToCome}) is told
 * beside it. A piece is followed at one heat without its rise; the rise, and the cycles to come,
 * count for as many seconds there as move as much carbon ({@link Worth}). How the brightest line
 * fades is kept as the seconds to a ladder of contrasts ({@link Fade}), so that what an eye makes
 * of it can be averaged over afterwards.
 *
 * <p>What can be integrated is not sampled: whether a line of a contrast is seen is averaged over
 * eyes and states at a few nodes ({@link Eyes}). What was seen weighs each history by how likely it
 * would have shown that ({@link Belief}); none is thrown away. "Half" and "nine of ten" ({@link
 * Chances}) are the chances, so weighed, that an eye sees no line in the blade.
 *
 * <p>Possible histories ({@link Histories}) are walked on a coarse grid; what that tells short is
 * set right by the usual history on both grids. Each is computed alone, so numbers do not depend on
 * how many cores share the work.
 */
package seamsoak.soak;
