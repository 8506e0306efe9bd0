/**
 * Carbon among the phases: its activity and mobility in austenite, ferrite and cementite, what
 * scale leaves at a face, and the one definition of A1, A3 and Accm that engine and schedule share.
 *
 * <p>Nothing here knows a strip or a heat. Read {@link PhaseLines} first; {@link Phases} has the
 * rest.
 */
package seamsoak.property.phase;
