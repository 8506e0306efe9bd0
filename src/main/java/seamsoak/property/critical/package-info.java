/**
 * Temperatures at which a steel transforms: Ae1 and Ac1, Ae3 and Ac3, the start of martensite. One
 * formula beside the other, since they part; which of them an answer uses is chosen further up.
 *
 * <p>Read {@link Ae1Mean} first.
 */
package seamsoak.property.critical;
