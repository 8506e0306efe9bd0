/**
 * Dangers: the cautions of {@code cautions.csv} by step and condition, and plans so dangerous that
 * they are refused.
 *
 * <p>It knows billets and baths, but neither soak nor schedule: those tell it what they do. Read
 * {@link StepCautions} first, then {@link HardStop}, which finds a {@link Danger} and leaves its
 * sentence to {@code words}.
 */
package seamsoak.safety;
