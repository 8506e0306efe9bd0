package seamsoak.report;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import seamsoak.chart.figure.Drawn;
import seamsoak.chart.figure.SoakFigure;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.Advice;
import seamsoak.plan.Outlay;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.CardWords;
import seamsoak.words.beside.BesideWords;

/**
 * The answer on a billet as pieces of HTML, for a page that has more on it: what to do, and a piece
 * for each subject. The same templates make the report.
 *
 * @param figures the charts, each with its SVG file
 * @param pairs each two steels of the stack that lie on each other
 */
public record AnswerPage(
    Advice advice,
    UnitSystem units,
    List<Drawn> figures,
    List<PairAdvice> pairs,
    Colophon colophon) {
  /** A subject: its title, and the HTML of all that is said of it, its heading included. */
  public record Piece(String id, String title, String html) {
    static Piece of(Chapter chapter) {
      StringOutput page = new StringOutput();
      JtechapterGenerated.render(new OwaspHtmlTemplateOutput(page), null, chapter);
      return new Piece(chapter.id(), chapter.title(), page.toString());
    }
  }

  /** What to do, why, and what stands in the way. */
  public String verdict() {
    ShopCard card = ShopCard.of(advice, units);
    return html(out -> JteverdictGenerated.render(out, null, card));
  }

  /** All else. */
  public List<Piece> pieces() {
    return chapters().stream().map(Piece::of).toList();
  }

  /** Other soaks beside the one advised; nothing where nothing need be soaked. */
  public Optional<WhatIf> whatIf() {
    return figures.stream()
        .map(Drawn::figure)
        .filter(SoakFigure.class::isInstance)
        .map(f -> WhatIf.of(advice.soak(), units, (SoakFigure) f))
        .findFirst();
  }

  /** This plan beside one that was kept: what each comes to, and what differs. */
  public Piece beside(Advice kept) {
    BesideWords words = new BesideWords(kept, advice, units);
    Table table =
        Columns.of(words.rows(), units)
            .words("", BesideWords.Row::what)
            .words("plan A", BesideWords.Row::first)
            .words("now", BesideWords.Row::now)
            .words("differs", BesideWords.Row::differs)
            .captioned("Plan A, and the billet as it is now");
    Chapter chapter = Chapter.of("beside", "Beside plan A").words(words.says());
    return Piece.of(words.differs() ? chapter.table(table) : chapter);
  }

  /** What the work takes: hours and stock. */
  public Piece outlay(Outlay outlay) {
    return Piece.of(new OutlayText(outlay, units).chapter());
  }

  /** What each number rests on. */
  public Piece rests(Trace trace) {
    return Piece.of(
        new ReportChapters(
                new BilletChapters(advice, units, figures),
                pairs,
                Optional.empty(),
                trace,
                colophon)
            .sources());
  }

  /** What to set a kiln to, as plain columns; nothing where there is no kiln or all is refused. */
  public Optional<String> program() {
    return advice.hardStops().isEmpty() && !advice.schedule().program().isEmpty()
        ? Optional.of(new ProgramText(advice, units).csv())
        : Optional.empty();
  }

  private List<Chapter> chapters() {
    return new ReportChapters(
            new BilletChapters(advice, units, figures),
            pairs,
            Optional.empty(),
            Trace.NONE,
            colophon)
        .ofBillet();
  }

  /** The card on one sheet and its back on another, to be printed: a page of its own. */
  public byte[] sheet() {
    Sheet sheet = Sheet.of(advice, units, colophon, "");
    String style = Sheet.style();
    return html(out -> JtesheetGenerated.render(out, null, sheet, style, HtmlReport.policy(style)))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** The same card with its boxes left empty: for a class, or to think with a pencil. */
  public static byte[] blankSheet() {
    String style = Sheet.style();
    return html(out ->
            JteblankGenerated.render(
                out, null, CardWords.USUAL_STEPS, style, HtmlReport.policy(style)))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** What a browser may let in for that page: nothing but its own style. */
  public static String sheetPolicy() {
    return HtmlReport.policy(Sheet.style());
  }

  private static String html(Consumer<OwaspHtmlTemplateOutput> template) {
    StringOutput page = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(page));
    return page.toString();
  }
}
