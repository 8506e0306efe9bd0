package seamsoak.report;

/**
 * Where an answer comes from.
 *
 * @param program with its version
 * @param data which tables it used
 * @param command that gives it again
 */
public record Colophon(String program, String data, String command) {}
