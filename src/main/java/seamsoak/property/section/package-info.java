/**
 * What steel, air, furnaces and quenchants bring to the conduction of {@code heat}: heat content,
 * conductivity, films and emissivity.
 *
 * <p>Read {@link SectionHeat} first.
 */
package seamsoak.property.section;
