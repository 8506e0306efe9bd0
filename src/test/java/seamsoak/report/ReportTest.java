package seamsoak.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Ran;
import seamsoak.support.Reports;

/** The report as a file. */
@Tag("slow")
class ReportTest {
  /**
   * The checker judges the one style sheet by its start tag, before there is anything to take the
   * policy's hash of. {@link ReportInBrowserTest} shows that a browser lets it in.
   */
  private static final Pattern SHEET =
      Pattern.compile("^Warning: Inline style violates Content Security Policy .*\nFrom line .*\n");

  @ParameterizedTest
  @ValueSource(strings = {"mosaic", "refused", "nasty"})
  void theHtmlCheckerFindsNothing(String name) throws Exception {
    EmbeddedValidator checker = new EmbeddedValidator();
    checker.setOutputFormat(EmbeddedValidator.OutputFormat.TEXT);
    String said = checker.validate(ReportInBrowserTest.report(name)).strip();
    assertEquals(
        "Document checking completed. No errors found.", SHEET.matcher(said).replaceFirst(""));
  }

  @Test
  void aNameThatLooksLikeMarkupAppearsAsWritten() throws IOException {
    String html = Files.readString(Reports.nasty());
    assertFalse(html.contains("<b>"), "no element came of it");
    assertTrue(html.contains("<h1>&lt;b&gt;&amp;\"'</h1>"), "billet");
    assertTrue(html.contains("<th scope=\"row\">&lt;b&gt;&amp;\"'</th>"), "steel");
    for (String file : List.of("plan.txt", "advice.json", "schedule.svg", "section-1.svg")) {
      String text = Files.readString(Reports.nasty().resolveSibling(file));
      String written =
          switch (file.substring(file.lastIndexOf('.'))) {
            case ".json" -> "<b>&\\\"'";
            case ".svg" -> "&lt;b&gt;&amp;\"'";
            default -> Reports.NASTY;
          };
      assertTrue(text.contains(written), file);
    }
  }

  @Test
  void nothingIsLoadedAndNothingRuns() throws Exception {
    String html = Files.readString(Reports.mosaic());
    for (String no :
        List.of("<script", "<link", "<img", "<iframe", "javascript:", " on", "url(h")) {
      assertFalse(html.replaceAll("[^<]*>[^<]*<", "<").contains(no), no);
    }
    assertFalse(
        html.replace("http://www.w3.org/2000/svg", "")
            .matches("(?s).*(src|href)=\"(?!#|data:image/png;base64,).*"),
        "links stay in the page");
    Matcher style = Pattern.compile("(?s)<style>(.*?)</style>").matcher(html);
    assertTrue(style.find());
    byte[] hash =
        MessageDigest.getInstance("SHA-256")
            .digest(style.group(1).getBytes(StandardCharsets.UTF_8));
    assertTrue(
        html.replace("&#39;", "'")
            .contains(
                "default-src 'none'; style-src 'sha256-"
                    + Base64.getEncoder().encodeToString(hash)
                    + "'"),
        "the policy knows the style");
    assertFalse(html.contains("style=\""), "no style outside of it");
  }

  @Test
  void headingsGoDownOneLevelAtATimeAndTablesAreNamed() throws IOException {
    String html = Files.readString(Reports.mosaic());
    List<Integer> levels = new ArrayList<>();
    Matcher heading = Pattern.compile("<h([1-6])").matcher(html);
    while (heading.find()) {
      levels.add(Integer.parseInt(heading.group(1)));
    }
    assertEquals(1, levels.stream().filter(l -> l == 1).count());
    for (int i = 1; i < levels.size(); i++) {
      assertTrue(levels.get(i) <= levels.get(i - 1) + 1, levels.toString());
    }
    int tables = html.split("<table[ >]").length;
    assertEquals(
        tables,
        html.split("<table( class=\"(short|work)\")?>\n<caption>[^<]").length,
        "each has a caption");
    // every chart is followed by a table before the next heading
    for (String after : html.split("</figure>")) {
      if (!after.startsWith("<!DOCTYPE")) {
        int table = after.indexOf("<table");
        int next = after.indexOf("<h2");
        assertTrue(table >= 0 && (next < 0 || table < next), after.substring(0, 200));
      }
    }
  }

  @Test
  void theCommandIsToldSoThatItCanBeGivenAgain() throws IOException {
    Path report = Reports.refused();
    String html = Files.readString(report);
    assertTrue(
        html.contains(
            "plan alloy-data/billets/galvanized-jacket.json --samples 2 --out "
                + report.getParent()),
        "command");
    assertTrue(html.indexOf("Do not do this") < html.indexOf("id=\"answer\""), "danger first");
  }

  /** What the steels do not agree on stands on the card, and no soak where all is refused. */
  @Test
  void theWorstNewsIsOnTheCard(@TempDir Path folder) throws IOException {
    Ran ran =
        Ran.run(
            "plan",
            "alloy-data/billets/san-mai.json",
            "--samples",
            "2",
            "--out",
            folder.toString());
    assertEquals(0, ran.code(), ran.err());
    String html = Files.readString(folder.resolve("report.html"));
    String card = html.substring(0, html.indexOf("id=\"step-1\""));
    assertTrue(card.contains("<strong>Conflict.</strong>"), card.substring(card.indexOf("<body>")));
    String refused = Files.readString(Reports.refused());
    assertTrue(refused.contains("<h2 id=\"answer\">Not to be done as it is written</h2>"));
    assertFalse(refused.contains("For the kiln"), "no program");
  }
}
