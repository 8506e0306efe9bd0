/**
 * What a billet file may hold, and its reading: all that is wrong with a file is told at once.
 *
 * <p>It may use {@code billet} and what that uses. It knows no metal: what a file means is computed
 * elsewhere.
 *
 * <p>Read {@link BilletReader} first. A {@link Form} declares the keys of an object of the file,
 * once: each {@link Key} with its reader, whether it may be left out, and an example. All keys
 * present are read, what is wrong with them is gathered, and the object is made only when nothing
 * is; so a record never holds what could not be read. What is wrong only between values that are
 * each right is found by what makes the object.
 */
package seamsoak.billet.file;
