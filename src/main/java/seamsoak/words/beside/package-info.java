/**
 * What another plan, or another soak, would come to beside the one given. {@link
 * seamsoak.words.beside.BesideWords} comes first.
 */
package seamsoak.words.beside;
