/**
 * Mathematics without metal: one time step of TR-BDF2, tridiagonal systems, roots, series.
 *
 * <p>It uses no other package and no library, and takes plain {@code double} with the unit in the
 * name. Laws of materials come in through interfaces ({@link ConservativeSystem}, {@link
 * seamsoak.heat.HeatLaw}, {@link seamsoak.heat.FaceLaw}).
 *
 * <p>Read {@link TrBdf2} first. Carbon in a strip and heat in a section are both stepped by it.
 */
package seamsoak.numeric;
