/**
 * Temperatures at which a steel transforms: Ae1 and Ac1, Ae3 and Ac3, the start of martensite and
 * of bainite. One formula beside the other, since they part; all are rows of tables.
 *
 * <p>Read {@link Criticals} first: which of them answers use.
 */
package seamsoak.property.critical;
