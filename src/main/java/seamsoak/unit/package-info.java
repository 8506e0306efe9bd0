/**
 * Typed quantities: reads what people write ("1-3/8 in", "2150 F", "1 h 20 min") and writes it in
 * both systems of units.
 *
 * <p>It uses no other package and no library. What it knows is units, not metal: a bound that
 * follows from steel belongs where the steel is known. Inside, every quantity is a {@code double}
 * in SI units, and arithmetic is done on that.
 *
 * <p>Read {@link Length} first; the others are built like it. {@link QuantityText} holds what they
 * share: the one sentence that says what was found and what is accepted.
 */
package seamsoak.unit;
