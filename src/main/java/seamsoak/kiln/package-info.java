/**
 * Several billets in one kiln: which steps of their schedules share a heat and a hold, in what
 * order they are taken out, and which do not go together.
 *
 * <p>It plans no step anew: each billet's own schedule says what it wants, and what is decided here
 * is where those wishes meet. No sentences; they stand in {@code words.kiln}. Read {@link
 * KilnAdvisor} first.
 *
 * <p>A {@link Wish} is a step that a billet wants of the kiln: a window of temperature, a hold that
 * is a least at each heat ({@link Hold}) and a most, and what comes after it. {@link Wishes} makes
 * them of a schedule, {@link Loads} puts those that meet into one {@link Load}, and {@link Apart}
 * says why others do not.
 *
 * <p>Where the ends of windows come from: normalizing, cycles and the hardening heat from what the
 * schedule itself asks of its steels ({@link seamsoak.schedule.Margins}, sheets, windows by
 * carbon); soaks from the minutes that the soak's own options need; what stays below Ac1 from the
 * equal parameter of Hollomon and Jaffe, so that a cooler hold is a longer one; tempers from the
 * edge's own tempering curve.
 *
 * <p>Choices of ours, all judgement unless said otherwise:
 *
 * <ul>
 *   <li>Steps of one kind are matched, counted from the last: the last cycles and the last tempers
 *       belong together, and a billet with more of them begins alone. A stress relief beside
 *       another's anneal would meet as well and is not looked for: the order of the work would
 *       differ from billet to billet.
 *   <li>The heat of a load is the middle of what its billets planned, within what they share;
 *       windows 6 K apart count as meeting, as in {@link seamsoak.schedule.demand.HardeningHeat}.
 *   <li>A hold's most is where grain is half a number coarser than after the least, or, for what
 *       hardens bare, where the skin is 0.05 mm deeper: half of what is ground off besides.
 *   <li>A quench takes 3 minutes until the next piece can leave (common practice, no source).
 *   <li>The kiln has all its heat back at once. It has not, with more in it than one billet, and
 *       the answer says so.
 * </ul>
 */
package seamsoak.kiln;
