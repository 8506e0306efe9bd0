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
 * answer forbids.
 */
package seamsoak.page;
