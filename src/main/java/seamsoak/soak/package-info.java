/**
 * The soak: what is left to clear, how long that takes at each temperature over the possible
 * histories of the billet, what was seen, what each option costs, and which one to take.
 *
 * <p>It does not know the schedule; who calls it hands it the curves to come and a grain function.
 * What it decides are records and enums ({@link SoakReason}, {@link SoakNote}); it writes no
 * sentence. Read {@link SoakAdvisor} first, then {@link Clearing}.
 *
 * <p>Possible histories ({@link Histories}) are walked on a coarse grid; what that tells short is
 * set right by the usual history on both grids. Each is computed alone, so numbers do not depend on
 * how many cores share the work.
 */
package seamsoak.soak;
