package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Looks;

/** What the page looks like: on a phone, at 200 %, on paper, to those who do not see it. */
@Tag("slow")
@Timeout(300)
class PageLooksTest extends InBrowser {
  @ParameterizedTest
  @CsvSource({"390, 844", "640, 400", "1280, 800"}) // a phone; 200 % on a desk; a desk
  void everythingIsSeenAndLargeEnoughToHit(int width, int height) throws Exception {
    tab.size(width, height);
    assertEquals("", tab.ask(Looks.LAYOUT), "shelf");
    assertEquals("", tab.ask(Looks.SMALL), "shelf");
    begin("mosaic");
    tab.until(WHOLE);
    assertEquals("", tab.ask(Looks.LAYOUT), "bench");
    assertEquals("", tab.ask(Looks.SMALL), "bench");
    tab.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals("", tab.ask(Looks.LAYOUT), "all unfolded");
    assertEquals("", tab.ask(Looks.SMALL), "all unfolded");
  }

  @ParameterizedTest
  @CsvSource({"390, 844", "1280, 800"})
  void theAccessibilityCheckerFindsNothing(int width, int height) throws Exception {
    tab.size(width, height);
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE), "shelf");
    begin("mosaic");
    tab.until(WHOLE);
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE), "bench");
    tab.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals("", tab.ask(Looks.AXE), "all unfolded");
  }

  /** At the fire, with the clock over and all unfolded, it is large enough for gloves. */
  @ParameterizedTest
  @CsvSource({"320, 640", "1280, 800"}) // between them FireInBrowserTest works an evening
  void atTheFire(int width, int height) throws Exception {
    tab.size(width, height);
    begin("mosaic");
    tab.until(WHOLE);
    tab.go(page.address() + "d/1/fire");
    tab.until(FireInBrowserTest.WHOLE_AT_THE_FIRE);
    tab.tap("button[value=start]");
    tab.until("document.getElementById('hold') !== null");
    tab.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals("", tab.ask(Looks.LAYOUT));
    assertEquals("", tab.ask(Looks.SMALL));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
    if (System.getProperty("pictures") != null) {
      java.nio.file.Files.write(
          java.nio.file.Path.of(System.getProperty("pictures"), "fire-" + width + ".png"),
          tab.picture());
    }
    tab.go(page.address() + "phones");
    tab.until("document.querySelector('h1').textContent.includes('Phones')");
    assertEquals("", tab.ask(Looks.LAYOUT));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
    tab.go(page.address() + "d/1/fire.log");
    tab.until("document.getElementById('log') !== null");
    assertEquals("", tab.ask(Looks.LAYOUT));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
  }

  /** One sheet for the work and one for the cautions, on either size of paper. */
  @ParameterizedTest
  @CsvSource({"8.5, 11", "8.27, 11.7"})
  void theCardIsOneSheetAndTheCautionsAnother(double width, double height) throws Exception {
    begin("mosaic");
    tab.until(WHOLE);
    tab.go(page.address() + "d/1/card");
    tab.until("document.querySelector('.work') !== null");
    String pdf = new String(tab.paper(width, height), StandardCharsets.ISO_8859_1);
    assertEquals(3, pdf.split("/MediaBox", -1).length, "two sheets");
    assertEquals("", tab.ask(Looks.LAYOUT));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
    tab.size(390, 844);
    assertEquals("", tab.ask(Looks.LAYOUT));
  }

  @ParameterizedTest
  @CsvSource({"8.5, 11", "8.27, 11.7"})
  void theBlankCardIsOneSheet(double width, double height) throws Exception {
    tab.go(page.address() + "blank");
    String pdf = new String(tab.paper(width, height), StandardCharsets.ISO_8859_1);
    assertEquals(2, pdf.split("/MediaBox", -1).length, "one sheet");
    assertEquals("", tab.ask(Looks.LAYOUT));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
  }

  @ParameterizedTest
  @CsvSource({"390, 844", "640, 400"})
  void thePagesWithoutABilletToo(int width, int height) throws Exception {
    tab.size(width, height);
    String sizes = "first=1084&second=15N20&layer=0.02+in&section=1/4+in";
    for (String at : new String[] {"shop", "pair", "pair?" + sizes, "pair?first=x&layer=-1"}) {
      tab.go(page.address() + at);
      tab.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
      assertEquals("", tab.ask(Looks.LAYOUT), at);
      assertEquals("", tab.ask(Looks.SMALL), at);
      tab.run(Looks.axe());
      assertEquals("", tab.ask(Looks.AXE), at);
    }
  }
}
