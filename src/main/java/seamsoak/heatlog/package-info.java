/**
 * Logs of real heats: any logger's or kiln controller's table is read, what it leaves open is
 * asked, and what the heat was worth is told with its band.
 *
 * <p>Nothing is guessed. Where a log can be read in two ways a {@link LogQuestion} comes back in
 * place of readings; {@link LogAnswers} and {@link HeatQuery} hold the answers. The way of a log:
 *
 * <ul>
 *   <li>{@link Layout}: delimiter, head, width; {@link Column}: kind and decimal mark, by nine of
 *       ten cells of a sample from all over the file
 *   <li>{@link TimeFinder} where its times come from; {@link Gathering} goes through all rows once;
 *       {@link TimeAxis} puts them in order: newest first, over midnight, several rows to a minute.
 *       A time that runs backward is a fault
 *   <li>{@link Readings}: spikes out ({@link Spikes}), gaps marked; {@link LogCurve}: the same in
 *       few points, nowhere further off than 2 K
 *   <li>{@link HeatAdvisor}: the piece, read itself or lagging behind the air ({@link Followed}),
 *       and its {@link Credit}
 * </ul>
 *
 * <p>Our choices, judgement: a gap is more than 60 s, and more than two and a half rows; carbon is
 * counted there at its cooler end, scale and grain at the hotter, and the band reaches down to
 * nothing in gaps; one couple's errors are one doubt, and doubts that have nothing to do with each
 * other are added as squares. The other settings stand in {@code heat-log.csv} and {@code
 * thermocouples.csv}.
 *
 * <p>Nothing here knows a billet's steps, and no sentence is written here. Read {@link LogReader}
 * first.
 */
package seamsoak.heatlog;
