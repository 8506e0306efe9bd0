/**
 * What every published correlation has in common: its coefficients out of {@code correlations.csv},
 * what it says of itself (result, unit, ranges, stated error, source and standing), and the ranges
 * of low-alloy steel that many of them share.
 *
 * <p>No correlation lives here. Read {@link Correlation} first.
 */
package seamsoak.property.correlation;
