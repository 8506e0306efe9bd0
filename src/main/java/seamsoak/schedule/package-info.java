/**
 * From the last weld to the last temper: which steps, how hot, how long, why, and what the steels
 * of a billet do not agree on.
 *
 * <p>It may ask the soak for what it recommends, never the other way round. Read {@link
 * ScheduleAdvisor} first.
 *
 * <p>A {@link Course} is a piece of metal with all that was done to it; carrying a {@link
 * ScheduleStep} through the carbon engine above 500 C gives the next one, with grain, structure and
 * skin noted after it. Small types plan the steps, from one course to the next: {@link
 * AfterForging} (cool-down, soak), {@link Cycles} (normalize, refine), {@link Softening} (which
 * anneal, stress relief), {@link BenchWork}, {@link IntoTheBath} (pre-heat, quench) and {@link
 * AfterTheBath} (cold, tempers); {@link ScheduleAdvisor} joins them. A step is of a {@link
 * StepKind}, a list of {@link Leg}s that {@link Heats} makes of the section, so that a hold begins
 * when the core is there, a {@link Task} (what to do and why, in numbers) and some {@link Check}s;
 * their sentences stand in {@code words}. What decides:
 *
 * <ul>
 *   <li>{@link Grain}: each pass through the critical range leaves 0.35 of the size before, then
 *       Lee and Lee's growth (judgement). Cycles stop at ASTM 10 or when one gains less than half a
 *       number. For hardenability grain counts as ASTM 8 at the finest, where the standard's
 *       factors end. Growth takes the mean of the low-alloy steels; stainless layers would make it
 *       too fine.
 *   <li>{@link Refining}: the last heat before the quench is never the hottest, and what must not
 *       be normalized is kept below where it changes while the others are refined. {@link
 *       Softening} then stays cooler than the last cycle: it tempers below Ac1 what hardened in
 *       air, and falls slowly only where nothing was refined or the sheets of all share a heat so
 *       cool.
 *   <li>{@link Conflicts} and {@link BladeConflicts} find what does not fit, {@link Remarks} what
 *       to know of the whole; {@link seamsoak.safety.HardStop} refuses. Each is a record with its
 *       numbers, and {@code words} has the sentences.
 * </ul>
 *
 * <p>What each steel asks for, and how several agree, stands in {@code schedule.demand}.
 *
 * <p>Choices of ours:
 *
 * <ul>
 *   <li><i>Spheroidizing</i> lies between Ac1 and Accm of the steel with the most carbon, whatever
 *       ranges are printed: with all carbide dissolved there is nothing left to gather.
 *   <li><i>Without a kiln</i> nothing is cooled slowly in one, and nothing held at a dull red: what
 *       may harden in air is buried, the anneal is a dull red and burying, stress relief is left
 *       out.
 *   <li><i>A grade not meant to be hardened</i> that took up carbon counts as hardening from 55 HRC
 *       (0.38 %C), others from 50.
 * </ul>
 */
package seamsoak.schedule;
