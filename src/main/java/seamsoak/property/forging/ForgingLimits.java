package seamsoak.property.forging;

import seamsoak.source.Estimate;

/**
 * How hot a steel may be forged and soaked.
 *
 * @param highestForging highest forging temperature in C; its band spans the sources at hand
 * @param burningCelsius where the steel burns, by the handbook line
 * @param solidusCelsius where the first liquid forms
 * @param refusalCelsius above this nothing is advised: the burning line, or 50 C below the solidus,
 *     whichever is lower
 */
public record ForgingLimits(
    Estimate highestForging, double burningCelsius, double solidusCelsius, double refusalCelsius) {}
