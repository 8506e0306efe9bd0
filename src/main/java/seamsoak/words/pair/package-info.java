/** What is said of two steels side by side. {@link seamsoak.words.pair.PairWords} comes first. */
package seamsoak.words.pair;
