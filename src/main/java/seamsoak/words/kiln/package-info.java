/**
 * What is said of several billets in one kiln. {@link seamsoak.words.kiln.KilnWords} comes first.
 */
package seamsoak.words.kiln;
