/**
 * Carbon in the fire: strips of metal with the seams on them, how carbon behaves in a steel, the
 * solver, what passes between unlike steels, and what an eye makes of a seam.
 *
 * <p>It may use everything from {@code unit} to {@code property}. It does not know the shop: what
 * was stacked, drawn or ground is {@code billet}'s to say, and what a face meets in the fire comes
 * in as an {@link Edge} and {@link Surroundings}.
 *
 * <p>Read {@link Strip} first, then {@link CarbonLaw} and {@link StripSolver}.
 *
 * <p><b>What is computed.</b> A strip is a straight line through metal with two edges, each an
 * outer face or a plane of symmetry: a row of cells, each with a thickness, a metal and its carbon
 * per metal atom, which is what is conserved. Seams are places on it ({@link Plane}), not its ends,
 * so the metal beyond a seam is simply there: nothing has to be assumed about it, and carbon moves
 * from seam to seam as it does in the bar. Flux runs on activity. With the mobility integrated over
 * the activity once (the <i>potential</i> of {@link CarbonLaw}), one formula serves ferrite,
 * austenite and the levels between phases, where the activity is flat. Between unlike steels the
 * activity at the face is found for which both half cells carry the same flux ({@link Seam}).
 *
 * <p><b>Time</b> goes by TR-BDF2 with full Newton. Each stage closes with the fluxes of its last
 * linearization, so the balance closes to rounding whatever is left of the residual. Newton stops
 * each cell just beyond a bend of the law (where a phase ends) and does not take a stage on trust
 * that passed one: otherwise it can go back and forth across the bend, or leave a cell far beyond
 * it. {@link Jumps} parts the curve at A1, where the law itself jumps, so that no step lies across.
 *
 * <p><b>Scale</b> eats its way in from both edges, each time the zone up to the next seam or other
 * metal ({@link Recession}). The zone's cells keep their share of what is left, the faces between
 * them move, and what they pass over changes cells (an arbitrary Lagrangian-Eulerian grid): within
 * a heat nothing is remeshed, and no seam is ever moved through. Grinding and stacking lay a new
 * grid by a monotone cubic through the summed carbon ({@link Regrid}), fine at faces and seams.
 *
 * <p><b>A line</b> ({@link Line}) is the carbon at a seam against the highest that both of its
 * sides come to, told as one steel would have it at equal activity. Whether it shows is a matter of
 * contrast ({@link Eye}, {@link Sight}): what the eye takes for a point against the mean about it,
 * of whatever whiteness an etch gives the carbon. That does not depend on where a strip ends, is
 * nothing where carbon is even or only rises from a skin, takes a hair for weak and a wide shade
 * for no line. Where two seams cross, carbon is the product of both over the core's ({@link
 * Sight#crossing}): within 0.007 wt% of two dimensions once the layers are even, within 0.03 just
 * after the first restack.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>Covered face.</i> The activity at the surface lies between the steel's own, at the
 *       carbon it came with, and the scale's, by the share that is open. Measured from the face
 *       cell instead it would depend on the grid: with ever finer cells a covered face would become
 *       an open one.
 *   <li><i>A1</i> is the mean of three regressions, but never below the point where the shifted A3
 *       and Accm lines cross. From 8 wt% Ni a steel is taken as austenite throughout.
 *   <li><i>Below A1</i> all steels share the activity of plain ferrite with cementite, so that no
 *       carbon creeps between two levels that differ only by their fits.
 * </ul>
 *
 * <p><b>The second opinion</b>, {@code seamsoak.carbon.second} among the tests, computes the same
 * problems from the same published correlations and with nothing else of the engine: RODAS4 with a
 * Jacobian by differences, fluxes by differences of activity phase by phase, activities at
 * interfaces by halving, scale as a drift of the metal past fixed fractions of the near layer, time
 * by its square root. The two agree to 0.001 wt% where all is austenite and to 0.01 wt% where a
 * front crosses the metal or carbide is left at a seam. Carbide left at a seam has an amount but no
 * thickness in either: it lies in whatever cell is there. So compare means over 0.01 mm or carbon
 * per area, never a cell's peak.
 */
package seamsoak.carbon;
