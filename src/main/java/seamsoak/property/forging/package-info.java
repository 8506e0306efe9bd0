/**
 * Hot steel under the hammer: how hot it may be, where the first liquid forms, what scale eats, how
 * grains grow, how it yields, welds and expands.
 *
 * <p>Read {@link Forging} first, then {@link ForgingRule}.
 */
package seamsoak.property.forging;
