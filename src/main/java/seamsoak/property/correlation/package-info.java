/**
 * What every published correlation has in common: its coefficients out of {@code correlations.csv},
 * what it says of itself (result, unit, ranges, stated error, source and standing), and the ranges
 * of low-alloy steel that many of them share.
 *
 * <p>A regression on the analysis is no type but rows of two tables, see {@link Regression}.
 *
 * <p>What is no regression extends {@link PublishedFormula}, or {@link CarbonTable} where a
 * handbook tabulates it by carbon.
 *
 * <p>No correlation lives here. Read {@link Correlation} first.
 */
package seamsoak.property.correlation;
