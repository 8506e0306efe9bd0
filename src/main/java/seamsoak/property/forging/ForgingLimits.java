package seamsoak.property.forging;

import seamsoak.source.Estimate;

/**
 * How hot a steel may be forged and soaked.
 *
 * @param highestForging highest forging temperature in C; its band spans the sources at hand
 * @param burningCelsius where the steel may burn, by the handbook line
 * @param stopCelsius above this no plan is let pass: 50 C below the solidus
 * @param solidusCelsius where the first liquid forms
 * @param refusalCelsius above this nothing is advised: the lower of burning and stop
 */
public record ForgingLimits(
    Estimate highestForging,
    double burningCelsius,
    double stopCelsius,
    double solidusCelsius,
    double refusalCelsius) {}
