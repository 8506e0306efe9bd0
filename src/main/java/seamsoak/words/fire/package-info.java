/**
 * What is said at the fire: one thing to do at a time, and what becomes of what was entered. Short,
 * since it is read from an arm's length with gloves on.
 */
package seamsoak.words.fire;
