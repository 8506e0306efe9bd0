/**
 * The shown face of a billet as an etch shows it: steel, carbon and whiteness at every point.
 *
 * <p>It may use everything from {@code unit} to {@code state}. It draws no file: that is {@code
 * chart}'s.
 *
 * <p>Read {@link FaceField} first. {@link Whence} undoes the steps for a point, down to the layer
 * of the stack that its metal came from; the section lines of the walk tell how much carbon is left
 * there.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>The product rule.</i> Carbon where lines cross is the product of what each has left over
 *       the core's. In {@code seamsoak.plane} among the tests a solver in two dimensions has the
 *       same section.
 *   <li><i>Where layers are too thin</i> for the lines to run through each, the lines through their
 *       mean tell how much is left, and the lines between neighbors what each layer has.
 *   <li><i>Every other piece turned.</i> A line stands for one row of pieces; the rows between are
 *       told by it from its other end, or of an odd number by the line through the rows. Tiles of
 *       an odd number, which have no such line any more, are told by their own row.
 *   <li><i>The skin</i> of the shown face is ground off before it is etched, and so is a jacket;
 *       the sides are shown as they are.
 *   <li><i>A twisted bar</i> is not drawn: its pattern is another one at every depth.
 * </ul>
 */
package seamsoak.face;
