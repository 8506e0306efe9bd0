/**
 * Published correlations, each a small type named for author and year or a row of a table: critical
 * temperatures, activity and mobility of carbon, phase lines, scaling, grain, forging and welding
 * limits, hardening, tempering, heat in sections.
 *
 * <p>It may use everything from {@code unit} to {@code steel}; it knows no strip and no billet.
 * Coefficients stand in {@code alloy-data/correlations.csv}. Regressions have range, stated error
 * and source in {@code alloy-data/regressions.csv} and no type of their own; what is no regression
 * has a type that holds the formula and, in its Javadoc, units, source, range and stated error. A
 * value outside the range is answered with a remark ({@code exceeded}), never refused and never
 * clamped in silence.
 *
 * <p>Read {@link Correlations} first: all of them by subject, read once and passed to whoever needs
 * them. Then {@link seamsoak.property.phase.PhaseLines}, the one definition of A1, A3 and Accm for
 * engine and schedule.
 *
 * <p><b>Hardening.</b> {@link seamsoak.property.hardening.Hardening} holds hardness, hardenability,
 * quenchants and tempering tables, {@link seamsoak.property.section.SectionHeat} heating and
 * cooling of sections, and {@link QuenchedSteel} is the door to both for one analysis.
 *
 * <p><b>Heat in a section</b> is conduction along its thickness ({@link seamsoak.heat.Conduction}).
 * The area that heat crosses goes as a power of the distance from the middle: 0 for a plate, 1 for
 * a bar, thickness over width for a flat bar. Time goes by the stepper of the carbon engine, in
 * heat per volume, so that an arrest needs no special case. Air, kiln and forge use the heat of EN
 * 1993-1-2 with its transformation; baths use austenite that does not change.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>Above 0.60 %C</i> martensite bends over to 67 HRC at 0.80 %, without a corner (one would
 *       make what an etch tells of hardness jump), and austenite is taken off that by Vickers
 *       hardness. A cap at 65 to 66 HRC with austenite taken off as well came out 2 to 4 HRC below
 *       handbook figures.
 *   <li><i>How long a middle may take</i> from 800 to 500 C is told on the section's own way down:
 *       the time it takes, times the square of its margin over the margin of through hardening. The
 *       criterion's own time belongs to the curve of an ideally quenched bar; beside it a blade
 *       that hardens looks too slow.
 *   <li><i>How deep it hardens</i> is judged by the ideal diameter over the one needed, with steps
 *       placed by bars remembered from handbooks. Nothing finer is worth while: the
 *       half-temperature criterion is no better than a third either way.
 *   <li><i>What to quench in</i> is decided once, by {@link
 *       seamsoak.property.hardening.QuenchRule}, for schedule, pairs and single steels.
 *   <li><i>A steel without a tempering table</i> loses what the tables lose on average, 3 HRC
 *       either way.
 * </ul>
 */
package seamsoak.property;
