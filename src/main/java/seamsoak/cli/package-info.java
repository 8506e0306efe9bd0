/**
 * The command line: options in, answers and exit codes out.
 *
 * <p>It may use every other package; it alone sees picocli, and it alone prints. It decides nothing
 * about metal.
 *
 * <p>Read {@link Commands} first: it puts the commands together and turns whatever goes wrong in
 * them into one sentence and an exit code. {@link Subcommand} is what each command builds on,
 * {@link Root} the options that all share, {@link Program} its names, exit codes and version.
 * {@link Tables} reads what nearly every command needs, once and side by side.
 */
package seamsoak.cli;
