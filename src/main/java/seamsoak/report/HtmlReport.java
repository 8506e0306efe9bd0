package seamsoak.report;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import seamsoak.chart.figure.Drawn;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.Advice;
import seamsoak.plan.Outlay;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;

/**
 * The report of a plan: one HTML file that needs no network and no script. Whatever comes from a
 * billet passes through the template, which escapes it; only the style and the charts are set as
 * they are.
 *
 * @param figures the charts in order, each with its SVG file; each is shown where its subject is
 *     told
 * @param pairs each two steels of the stack that lie on each other
 * @param outlay what the work takes, unless it must not be done
 * @param trace what the numbers rest on
 */
public record HtmlReport(
    Advice advice,
    UnitSystem units,
    List<Drawn> figures,
    List<PairAdvice> pairs,
    Optional<Outlay> outlay,
    Trace trace,
    Colophon colophon) {
  private static final String STYLE = "report.css";

  /** The page in UTF-8; the same input gives the same bytes. */
  public byte[] bytes() {
    StringOutput page = new StringOutput();
    String style = style(STYLE) + style("paper.css");
    JtereportGenerated.render(
        new OwaspHtmlTemplateOutput(page),
        null,
        Sheet.of(advice, units, colophon, "paper-"),
        new ReportChapters(
                new BilletChapters(advice, units, figures), pairs, outlay, trace, colophon)
            .all(),
        colophon,
        style,
        policy(style));
    return page.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Nothing may be loaded or run; of styles only the one in the page, known by its hash; pictures
   * only that lie in it.
   */
  static String policy(String style) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
      return "default-src 'none'; style-src 'sha256-"
          + Base64.getEncoder().encodeToString(hash)
          + "'; img-src data:; form-action 'none'; base-uri 'none'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }

  static String style(String name) {
    try (InputStream in = HtmlReport.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
