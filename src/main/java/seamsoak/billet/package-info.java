/**
 * A billet, its steps, and the walk through them: size, lines of carbon and pattern after each.
 *
 * <p>It may use everything from {@code unit} to {@code carbon}. It says what is, not what to do
 * about it: soaks and schedules belong to {@code soak} and {@code schedule}, and how a file is
 * written to {@code billet.file}. A step that cannot be done is refused with a {@link
 * seamsoak.data.Fault} at its place in the file.
 *
 * <p>Read {@link BilletWalk} first, a fold over the {@link Step}s, and {@link StepWork} for what
 * each does. Whatever acts by the kind of a step switches over {@link Step.Kind} without a default,
 * so that a new one does not compile until all have a word on it. {@link Workpiece} is the metal
 * between two of them, and {@link Shop} what the walk works with, all under one set of {@link
 * Assumptions}, so that a possible history is one more walk with other assumptions.
 *
 * <p><b>Section lines</b> ({@link SectionLine}). Straight lines stand for all of a billet's metal:
 * one through its thickness, one through its width and, once it is tiled, one square to the tile
 * seams from each tile to the next. Every parallel seam lies on them where it is, with its profile;
 * skins, seams and the metal between are places on a line. A restack lays the lines of the pieces
 * end to end, a turned piece bringing the other axis's ({@link Row}); where the result is the same
 * from both ends, half is kept. A draw stretches a line, grinding shortens it, scale eats its ends.
 * {@code Workpiece#through} is the one place that lists a piece's strips. In {@code seamsoak.plane}
 * among the tests a solver in two dimensions walks the demo's section by itself: the lines agree
 * with it within 0.003 wt% on one steel and 0.006 on the layered bar, at every seam after every
 * step.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>Layers.</i> A line runs through each layer of a stack of few; through the two at a face,
 *       half of the next and the mean of the rest where they are many, so that the mean is that of
 *       layers from middle to middle; and through the mean of all once they are thinner than carbon
 *       goes in a session. Two neighboring layers besides have a line of their own, from middle to
 *       middle, which tells the carbon of each steel.
 *   <li><i>The body has the carbon that its layers have</i>: what they lost at their faces before
 *       the weld, the lines through their mean lose too. The mean steel gets the activity that the
 *       layers come to among themselves, since that is what carbon flows by; its own carbon then
 *       differs from theirs by less than half a percent of it. Outer layers of many count half in
 *       the mean: their outer half goes to the fire.
 *   <li><i>A stack of many layers</i> is taken for the same from both faces, though an even number
 *       ends in two steels.
 *   <li><i>Tile seams</i> join a tile's two faces; where these are unlike, the line is parted in
 *       the middle of a piece, where nothing flows.
 * </ul>
 *
 * <p>And:
 *
 * <ul>
 *   <li><i>Faces laid together</i> scale as covered ones do; the billet shrinks by what each pair
 *       loses.
 *   <li><i>Cooling between forging heats</i> is left out; soaks and normalizing heats cool in air
 *       to 480 C.
 *   <li><i>Narrowest carbon line</i> ({@link seamsoak.carbon.Plane#narrowestMetres}): 3.33 sqrt(D
 *       t) until the neighboring seams come in, and from there a third of their distance.
 * </ul>
 */
package seamsoak.billet;
