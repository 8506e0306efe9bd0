/**
 * Answers as text for a terminal, as JSON and as the HTML report (templates in {@code
 * src/main/jte/report}).
 *
 * <p>It may use everything from {@code unit} to {@code chart}; it alone sees the template library.
 * An {@link seamsoak.plan.Advice} goes in, and nothing is computed on the way out: a number that is
 * missing here is missing there. It prints nothing; it hands back text. Its own are tables with
 * their heads and captions, and the order of chapters; sentences come from {@code words}.
 *
 * <p>Read {@link BilletChapters} first: what is said of a billet, a {@link Chapter} for each
 * subject. {@link BilletAnswer} puts them together for a terminal, where {@link Page} sets them as
 * plain text; {@link ReportChapters} for the report, each chart before its table. A new subject is
 * one section, and both show it. {@link Answer} keeps to a screen. {@link ShopCard} is the report's
 * first screen.
 *
 * <ul>
 *   <li><i>Policy.</i> The page lets in nothing but its one style sheet, by its hash. A template
 *       that set a style or a script of its own would be drawn without it, and a test would say so.
 *   <li><i>Escaping.</i> Everything that comes from a billet passes through a template. Only the
 *       style sheet and the charts, which escape for themselves, do not.
 *   <li><i>On a phone</i> charts keep nine tenths of their size and slide.
 * </ul>
 */
package seamsoak.report;
