/**
 * A billet's text as forms: what may be changed in it, what is wrong with it, how the bench shows
 * it. {@link seamsoak.page.form.Editing} and {@link seamsoak.page.form.Proof} come first. Knows no
 * server.
 */
package seamsoak.page.form;
