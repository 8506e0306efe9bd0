/**
 * Files in and out: CSV tables and JSON trees whose every value knows its line and column, and
 * files that are there whole or not at all.
 *
 * <p>It may use {@code unit}, and it alone sees Commons CSV and Jackson, so that either can be
 * changed in one place. It does not know what a table or a tree is about.
 *
 * <p>Read {@link Fault} first: the one exception of ours that reaches the command line, a sentence
 * with place, what was found and what is expected. Everything here exists so that it can name that
 * place. Then {@link FileSet} for how a run's files are written.
 *
 * <p>{@link FileSet} lays all files beside their places, then moves them in one go that a signal
 * has to wait for, and takes away what an earlier run had and this one has not. A kill in the
 * middle of the moves may leave files of two runs; the list of them ({@link Manifest}) has both by
 * then, and the next run puts it right. The list is also how files of other hands are told from
 * ours: by their bytes, so that one which somebody has changed is theirs.
 *
 * <p>{@link UserFile} is for what is the user's own and changed by the program: {@link JsonEditor}
 * changes single values in its text, and a run that finds the file other than it was read writes
 * nothing. Both know nothing of billets.
 */
package seamsoak.data;
