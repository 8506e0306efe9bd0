/**
 * Soak and schedule put together: everything that is said about a billet.
 *
 * <p>{@link Advice} is the output contract: the names of its tree are keys of the JSON. Read {@link
 * PlanAdvisor} first.
 */
package seamsoak.plan;
