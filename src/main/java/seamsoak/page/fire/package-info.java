/**
 * The billet at the fire, without the web: holds that are counted, what is entered beside them, who
 * is invited to enter it from a phone.
 *
 * <p>Nothing is decided here about metal: what is to be done comes from {@link seamsoak.plan.ToDo},
 * what is written goes through {@link seamsoak.billet.file.WorkBook} as that of the command line
 * does. Read {@link seamsoak.page.fire.Entry} first, then {@link seamsoak.page.fire.Recorder}.
 */
package seamsoak.page.fire;
