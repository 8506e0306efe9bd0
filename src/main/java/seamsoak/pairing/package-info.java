/**
 * Two steels side by side: families of checks, their limits, what would help, and the matrix of all
 * against all.
 *
 * <p>It may use everything from {@code unit} to {@code state}. No check runs the solver, so that
 * all pairs of the table take seconds: {@code carbon-loss} is the slowest term of the series,
 * within a factor of two of it. The solver tells the time to even out of one pair ({@link
 * FirstWelds}). Both {@code pair} and {@code pairs} use the same checks.
 *
 * <p>Read {@link PairCheck} first. {@link PairSteel} holds what every check asks of one steel,
 * worked out once. A {@link PairFamily} turns two of them and a {@link PairSetting} (layers,
 * section, welding heat, closed or open) into {@link Finding}s and knows nothing else, so swapping
 * the two mirrors them. A check is a name, a number of each steel, what of the two is rated ({@link
 * CheckName}) and {@link Why}; {@link Judge} holds it against its line of {@code pair-limits.csv}.
 * No sentence stands here: {@code words.PairWords} says what a finding holds. A steel with itself
 * fits by definition: its findings stay, their ratings do not count. Remedies are found by checking
 * again, not recited.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>Welding heat</i>: what the more delicate steel stands (the refusal of {@link
 *       seamsoak.property.forging.ForgingRule}), at most the usual 1230 C. A steel welds readily
 *       within 250 C below what it stands.
 *   <li><i>Expansion</i> is rated from room heat to 600 C, below which a layer no longer gives way;
 *       up to welding heat and as austenite it is told with wide limits.
 *   <li><i>Depth of hardening</i> comes from the carbon and vanadium dissolved at the common
 *       hardening heat, at grain 8, and is told up to 0.5 m: beyond 1.75 % chromium its factors
 *       have left their range.
 *   <li><i>Quench</i>: what a shop that has every bath would take for each alone and for both. Air
 *       may harden at half the depth that the criterion asks, as for the schedule.
 *   <li><i>Barrier to carbon</i> compares permeabilities (potential at one activity) with plain
 *       iron: nickel is slow because it holds little carbon, not because carbon is slow in it.
 *   <li><i>Must not be normalized</i>: a sheet with a hardening range and no normalizing one.
 * </ul>
 */
package seamsoak.pairing;
