package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import seamsoak.support.Engine;
import seamsoak.support.Looks;
import seamsoak.support.Paper;
import seamsoak.support.Screen;

/**
 * What a smith does, in each of the browsers that is installed.
 *
 * <p>What these tests have shown of Chromium 156, Firefox 153 and WebKitGTK 2.50: an address
 * 127.x.y.z is a secure context in all three. In all three a server on another port of the same
 * address is sent the cookie, {@code SameSite=Strict} or not, and nothing is sent to another
 * address: hence an address of its own for each start. Neither Firefox nor WebKit knows {@code
 * break-after: avoid} in columns. Chromium and Firefox print the card on the same two sheets;
 * WebKit's driver does not print, so there the card is only laid by its rules for paper on a screen
 * as wide as the paper. After the last button of a page the tab key leaves it in Firefox and begins
 * anew in the others. There is no number input, whose decimal mark would differ.
 */
@Tag("slow")
@Tag("long")
@EnabledIfSystemProperty(named = "long", matches = "true")
@Timeout(900)
class EnginesTest {
  /** What {@code @page} leaves free, in pixels of 96 to an inch: 12 mm aside, 10 mm above. */
  private static final double ASIDE = 2 * 12 * 96 / 25.4;

  private static final double ABOVE_AND_BELOW = 2 * 10 * 96 / 25.4;

  /** Lays a page on the screen by its rules for paper: no driver of WebKit prints. */
  private static final String AS_ON_PAPER =
      """
      [...document.styleSheets].flatMap(s => [...s.cssRules])
        .filter(r => r.media?.mediaText === 'print').forEach(r => r.media.mediaText = 'all')
      """
          .strip();

  /** The height of the work and of its back, of which each has a sheet. */
  private static final String HEIGHTS =
      """
      ((s, b) => (b.top - s.top) + ' ' + (s.bottom - b.top))(
        document.querySelector('.sheet').getBoundingClientRect(),
        document.querySelector('.sheet .back').getBoundingClientRect())
      """
          .strip();

  /** Headings of cautions that are in one column and what they head in the next. */
  private static final String LEFT_ALONE =
      """
      [...document.querySelectorAll('.sheet [id$=cautions] h3')].filter(h => {
        const own = [...h.getClientRects()];
        const next = h.nextElementSibling.querySelector('li').getClientRects()[0];
        return own.length !== 1 || next.left >= own[0].right || next.top < own[0].top;
      }).map(h => h.textContent).join('; ')
      """
          .strip();

  @TempDir private Path folder;
  @TempDir private Path browser;

  private Screen opened(Engine engine, int width, int height) throws Exception {
    assumeTrue(engine.installed(), "no such browser here");
    return engine.open(browser, width, height);
  }

  @ParameterizedTest
  @EnumSource(Engine.class)
  void fromNewToAnswerByKeyboard(Engine engine) throws Exception {
    try (Screen screen = opened(engine, 1280, 800);
        Page page = Pageful.open(folder)) {
      AtTheBench.at(page, screen).fromNewToAnswer(folder);
      assertEquals("", screen.ask(Looks.LAYOUT));
      assertEquals("", screen.ask(Looks.SMALL));
    }
  }

  @ParameterizedTest
  @EnumSource(Engine.class)
  void theCardAndItsPrint(Engine engine) throws Exception {
    try (Screen screen = opened(engine, 1280, 800);
        Page page = Pageful.open(folder)) {
      AtTheBench.at(page, screen).begin("mosaic");
      screen.until(AtTheBench.WHOLE);
      screen.go(page.address() + "d/1/card");
      screen.until("document.querySelector('.work') !== null");
      assertEquals("", screen.ask(Looks.LAYOUT));
      for (double[] inches : new double[][] {{8.5, 11}, {8.27, 11.7}}) {
        if (screen instanceof Screen.Printing printing) {
          byte[] paper = printing.paper(inches[0], inches[1]);
          assertEquals(2, Paper.sheets(paper, 72 * inches[0], 72 * inches[1]));
        }
        screen.size((int) (96 * inches[0] - ASIDE), 800);
        screen.ask(AS_ON_PAPER);
        assertEquals("", screen.ask(LEFT_ALONE));
        String[] heights = screen.ask(HEIGHTS).split(" ");
        double sheet = 96 * inches[1] - ABOVE_AND_BELOW;
        assertTrue(Double.parseDouble(heights[0]) < sheet, String.join(" ", heights));
        assertTrue(Double.parseDouble(heights[1]) < sheet, String.join(" ", heights));
        assertEquals("", screen.ask(Looks.LAYOUT));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Engine.class,
      names = "CHROMIUM", // in every build
      mode = EnumSource.Mode.EXCLUDE)
  void anEveningAtTheFire(Engine engine) throws Exception {
    Path file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    try (Screen screen = opened(engine, 390, 844);
        Page page = Pageful.open(folder)) {
      AtTheBench.at(page, screen);
      AtTheFire.from(page, screen, file).aWholeEvening();
    }
  }

  @ParameterizedTest
  @EnumSource(Engine.class)
  void aPhoneJoins(Engine engine) throws Exception {
    try (Screen phone = opened(engine, 390, 844)) {
      JoiningPhone.entersAHeat(phone, folder);
    }
  }

  @ParameterizedTest
  @EnumSource(Engine.class)
  void whoIsKeptOut(Engine engine) throws Exception {
    try (Screen screen = opened(engine, 1280, 800);
        Page page = Pageful.open(folder)) {
      AtTheBench bench = AtTheBench.at(page, screen);
      bench.begin("three-layers");
      String desk = screen.ask("location.pathname");
      String target = page.address().replaceFirst("/$", "");
      assertEquals("true", screen.ask("isSecureContext"));
      try (ForeignPage evil = new ForeignPage("127.0.0.1", target, desk)) {
        evil.isKeptOut(screen);
        assertEquals(List.of(), evil.cookies());
      }
      String own = URI.create(page.address()).getHost();
      try (ForeignPage evil = new ForeignPage(own, target, desk)) {
        evil.isKeptOut(screen);
        assertTrue(String.join(" ", evil.cookies()).contains("seamsoak_"), "it would be kept now");
      }
      screen.go(target + desk);
      bench.taken(1);
      assertEquals("1-3/8", bench.value("at-stack.width"));
    }
  }
}
