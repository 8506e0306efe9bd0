package seamsoak.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.support.Looks;
import seamsoak.support.Paper;
import seamsoak.support.Reports;
import seamsoak.support.Tab;

/** The report as a browser shows and prints it; left out where no Chromium is installed. */
@Tag("slow")
@Tag("long")
class ReportInBrowserTest {
  private static final String LAYOUT =
      """
      (() => {
        const wrong = %s;
        const answer = document.getElementById('answer').getBoundingClientRect();
        return innerWidth + ';' + wrong
            + (answer.bottom > innerHeight ? 'the answer is below the first screen' : '');
      })()
      """
          .formatted(Looks.LAYOUT);

  private static Tab tab;

  @BeforeAll
  static void open(@TempDir Path folder) throws Exception {
    assumeTrue(Tab.installed().isPresent(), "no Chromium here");
    tab = Tab.open(Tab.installed().orElseThrow(), folder, 1280, 800);
  }

  @AfterAll
  static void close() throws Exception {
    if (tab != null) {
      tab.close();
    }
  }

  private static void show(Path report, int width, int height) throws Exception {
    tab.size(width, height);
    tab.go(report.toUri().toString());
  }

  static Stream<Arguments> windows() {
    return Stream.of(
        Arguments.of("mosaic", 390, 844),
        Arguments.of("mosaic", 1280, 800),
        Arguments.of("refused", 390, 844),
        Arguments.of("nasty", 390, 844),
        Arguments.of("nasty", 1280, 800));
  }

  static Path report(String name) {
    return switch (name) {
      case "mosaic" -> Reports.mosaic();
      case "refused" -> Reports.refused();
      default -> Reports.nasty();
    };
  }

  @ParameterizedTest
  @MethodSource("windows")
  void nothingIsCutOrOverlapsAndTheAnswerIsOnTheFirstScreen(String name, int width, int height)
      throws Exception {
    show(report(name), width, height);
    assertEquals(width + ";", tab.ask(LAYOUT));
  }

  /** On a phone a chart keeps nine tenths of its size, so that its small letters stay legible. */
  @Test
  void chartsSlideOnAPhoneAndFitOnADesk() throws Exception {
    String scale =
        """
        (() => {
          const all = [...document.querySelectorAll('figure svg')];
          return all.length > 3 && all.every(s => {
            const width = s.getBoundingClientRect().width;
            const room = s.closest('figure').clientWidth;
            return width >= 0.89 * s.viewBox.baseVal.width
                && (innerWidth > 390 ? width <= room : true);
          }) ? 'good' : all.map(s => s.getBoundingClientRect().width).join();
        })()
        """;
    show(Reports.mosaic(), 390, 844);
    assertEquals("good", tab.ask(scale));
    show(Reports.mosaic(), 1280, 800);
    assertEquals("good", tab.ask(scale));
  }

  @Test
  void thePageIsDrawnUnderItsOwnPolicy() throws Exception {
    show(Reports.mosaic(), 390, 844);
    var image = ImageIO.read(new ByteArrayInputStream(tab.picture()));
    assertEquals(390, image.getWidth());
    // the caution's bar is drawn only if the policy lets the page's own style in
    boolean ember = false;
    for (int y = 0; y < image.getHeight(); y++) {
      ember |= (image.getRGB(18, y) & 0xFFFFFF) == 0xA33A08;
    }
    assertTrue(ember, "the style is in force");
  }

  @ParameterizedTest
  @CsvSource({"612, 792", "595, 842"})
  void printsOnLetterAndOnA4(int width, int height) throws Exception {
    show(Reports.mosaic(), 1280, 800);
    byte[] pdf = tab.paper(width / 72.0, height / 72.0);
    assertEquals(2, Paper.sheets(pdf, width, height), "the card and its back");
    tab.ask("document.getElementById('all').checked = true");
    byte[] all = tab.paper(width / 72.0, height / 72.0);
    int pages = Paper.sheets(all, width, height);
    assertTrue(pages >= 4 && pages <= 40, pages + " pages");
  }

  /** One report on a phone, one on a desk; the long run looks at each on both. */
  static Stream<Arguments> pages() {
    return Stream.of("mosaic", "nasty", "refused")
        .flatMap(name -> Stream.of(Arguments.of(name, 390), Arguments.of(name, 1280)))
        .filter(
            page ->
                Boolean.getBoolean("long")
                    || List.of("mosaic 390", "nasty 1280")
                        .contains(page.get()[0] + " " + page.get()[1]));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void theAccessibilityCheckerFindsNothing(String name, int width) throws Exception {
    show(report(name), width, 900);
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
  }
}
