/**
 * The billet file, its steps, and the walk through them: size, strips and pattern after each.
 *
 * <p>It may use everything from {@code unit} to {@code carbon}. It says what is, not what to do
 * about it: soaks and schedules belong to {@code advice}. A step that cannot be done is refused
 * with a {@link seamsoak.data.Fault} at its place in the file.
 *
 * <p>Read {@link BilletWalk} first, a fold over the {@link Step}s. {@link Workpiece} is the metal
 * between two of them, and {@link Shop} what the walk works with, all under one set of {@link
 * Assumptions}, so that a possible history is one more walk with other assumptions.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>Faces laid together</i> scale as covered ones do; the billet shrinks by what each pair
 *       loses.
 *   <li><i>Cooling between forging heats</i> is left out; soaks and normalizing heats cool in air
 *       to 480 C.
 *   <li><i>Narrowest carbon line</i> ({@link Family#narrowestMetres}): 3.33 sqrt(D t) until the
 *       neighboring seams come in, and from there a third of their distance.
 *   <li><i>Skin</i> ({@link Stage#skinMetres}) ends where a steel has 90 % of its due again over
 *       0.05 mm; its due is the carbon it came with or what the core's activity would give it,
 *       whichever is less. So a soft jacket is not taken for a skin.
 *   <li><i>The pattern's section</i> ({@link Pattern}, {@link TilePattern}, {@link PatternWalk})
 *       follows layers and seams through the steps by the sizes of the walk. Tiles that are stacked
 *       again can no longer be told in one plane, so only their outline is left.
 * </ul>
 */
package seamsoak.billet;
