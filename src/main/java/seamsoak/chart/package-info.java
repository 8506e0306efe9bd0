/**
 * Charts: figures of numbers and words, and how each is laid out and drawn.
 *
 * <p>It may use everything from {@code unit} to {@code words}; it alone sees JFreeChart, Batik and
 * AWT. It computes no metal: whatever is drawn was said below.
 *
 * <p>Read {@link Charts} first. A chart is a record of numbers and words (in {@code chart.figure})
 * and a class that lays it out ({@link SoakDrawing}). Colors, line weights and sizes of type are
 * {@link Ink}'s alone.
 *
 * <p>JFreeChart draws plots with axes of both units, their ticks, numbers and names, grids, curves,
 * marks, bands and levels, as {@link Frame} and {@link Axes} set it. Labels that stand beside what
 * they name are placed here ({@link Placer}, {@link SideLabels}), since it lets labels cover each
 * other.
 *
 * <p>The same figure gives the same SVG, byte for byte, on every machine. So all text, JFreeChart's
 * too, is measured by our own reader of the font that the program brings ({@link Typeface}, to
 * which {@link Lettering} lends the face of an AWT font), never by the machine's text engine.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>The width of a line</i> is drawn where the line shows.
 *   <li><i>A schedule's chart</i> ends before a step that is refused.
 * </ul>
 */
package seamsoak.chart;
