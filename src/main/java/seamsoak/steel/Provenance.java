package seamsoak.steel;

import seamsoak.source.Standing;

/**
 * Where one figure of the steel table comes from.
 *
 * @param standing how well it is known
 * @param lowConfidence whether even the memory of it is weak
 * @param source key of its source
 */
public record Provenance(Standing standing, boolean lowConfidence, String source) {}
