/**
 * The page: billets built, looked at, answered and kept in a browser on the smith's own machine.
 *
 * <p>It is a door like {@code cli}, which starts it, and may use every other package; it alone sees
 * the web server. It computes no metal and decides nothing about it: what a billet means, whether
 * it can be made and what is advised comes from where the command line has it. A billet is its
 * text, changed by the one writer ({@link seamsoak.data.JsonEditor}) and read by the one reader.
 *
 * <p>Read {@link Page} first: what each address does. {@link Listener} is the web server behind an
 * interface of ours, {@link Gate} lets in one browser and nobody else, {@link Seal} is what every
 * answer forbids. {@link Desk} is a billet in work: a {@link seamsoak.page.form.History} of texts,
 * changed by {@link Editing} (fields) and {@link seamsoak.page.form.Acts} (buttons), proved by
 * {@link seamsoak.page.form.Proof}, shown by {@link seamsoak.page.form.Bench} as cards and fields
 * with what is to be mended. {@link Work} answers, {@link Drafts} outlive a crash. {@link MyShop}
 * is what goes into each new billet, {@link Pairing} answers on two steels without one. Plan A
 * ({@link Desk.Kept}) is an answer that others are held against.
 *
 * <ul>
 *   <li><i>Without the script</i> (templates in {@code src/main/jte/page}) every action is a button
 *       of one form, which sends all fields and the number of the text that it had shown: a field
 *       is taken as changed where it differs from that text, and applied where nobody else has
 *       changed it since. The script sends the same, only sooner and less of it, and puts the page
 *       that comes back in place.
 *   <li><i>The forms</i> are those that the reader declares ({@link
 *       seamsoak.billet.file.FormBook}); the page has no list of keys of its own.
 *   <li><i>No path</i> comes from a request: a billet is a number here, and a name is looked up in
 *       the folder's listing or made of letters.
 * </ul>
 */
package seamsoak.page;
