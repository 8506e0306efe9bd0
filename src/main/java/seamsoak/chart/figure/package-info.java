/**
 * What a chart shows: records of numbers and words, made of an answer, and the pattern of a
 * section. Nothing here draws, and nothing sees JFreeChart, Batik or AWT.
 *
 * <p>Read {@link Figures} first. {@link Figure} and its records know each other, as a sealed type
 * must; no other classes here go in a circle.
 *
 * <ul>
 *   <li><i>A section</i> ({@link Pattern}, {@link TilePattern}, {@link PatternWalk}) follows layers
 *       and seams through the steps by the sizes of the walk; tiles that are stacked again can no
 *       longer be told in one plane, so only their outline is left.
 * </ul>
 */
package seamsoak.chart.figure;
