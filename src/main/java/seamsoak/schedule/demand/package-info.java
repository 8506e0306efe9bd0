/**
 * What the steels of a billet ask for, with the carbon that each has by then, and where they agree:
 * how it may be cooled, how hot it is hardened, in what, and how it is tempered.
 *
 * <p>It knows steels and sections, no step and no order of steps: {@code schedule} makes those.
 * Read {@link SteelNow} first.
 *
 * <ul>
 *   <li>{@link SteelNow} is a steel with the carbon it has by then; everything asks it.
 *   <li>{@link Guard} says how a section may be cooled from above the critical range: air, air and
 *       an anneal at once, kiln, anneal only. Disputed sheets ({@code disputes.csv}) and {@link
 *       seamsoak.property.QuenchedSteel#mayHardenInAir} decide.
 *   <li>{@link HardeningHeat} lies within the windows of all steels that harden, else in that of
 *       the edge. Steels of more than 4 % Cr or Ni, and of more than 3 % Cr beside leaner ones, are
 *       beyond the formulas: annealed, then left to their sheets.
 *   <li>{@link QuenchChoice} takes the bath that {@link seamsoak.property.hardening.QuenchRule}
 *       says, as {@code pair} and {@code steels} do; canola where none at hand will do. Its
 *       verdicts are each bath's own, for a thin edge and for the middle.
 *   <li>{@link Tempering} goes by the thin edge as it came out of the bath, martensite or not, and
 *       stays within the range for blades, or the sheet's where that is of springs, and within what
 *       there is to hold it in: no forge holds a temper.
 * </ul>
 *
 * <p>{@link Conflict} is what they do not agree on, in numbers.
 */
package seamsoak.schedule.demand;
