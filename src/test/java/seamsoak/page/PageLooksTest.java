package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import seamsoak.support.Looks;
import seamsoak.support.Paper;

/** What the page looks like: on a phone, at 200 %, on paper, to those who do not see it. */
@Tag("slow")
@Timeout(300)
class PageLooksTest extends InBrowser {
  /** A phone; 200 % on a desk; a desk. */
  private static final int[][] SIZES = {{390, 844}, {640, 400}, {1280, 800}};

  private static final String UNFOLD =
      "document.querySelectorAll('details').forEach(d => d.open = true)";

  @Test
  void everythingIsSeenAndLargeEnoughToHit() throws Exception {
    seenAndHit("shelf");
    tab.size(1280, 800);
    begin("mosaic");
    tab.until(WHOLE);
    seenAndHit("bench");
    tab.ask(UNFOLD);
    seenAndHit("all unfolded");
  }

  private void seenAndHit(String what) throws Exception {
    for (int[] size : SIZES) {
      tab.size(size[0], size[1]);
      assertEquals("", tab.ask(Looks.LAYOUT), () -> what + " " + size[0]);
      assertEquals("", tab.ask(Looks.SMALL), () -> what + " " + size[0]);
      if (size[0] != SIZES[1][0]) { // what the checker looks at changes between phone and desk
        tab.run(Looks.axe());
        assertEquals("", tab.ask(Looks.AXE), () -> what + " " + size[0]);
      }
    }
  }

  /** Billets on the shelf, ticked by keyboard; one kiln for them. */
  @Test
  void oneKiln() throws Exception {
    for (String name : List.of("mosaic", "san-mai")) {
      Files.copy(Path.of("alloy-data/billets/" + name + ".json"), folder.resolve(name + ".json"));
    }
    tab.go(page.address());
    tab.until("document.querySelectorAll('.tick').length === 2");
    seenAndHit("shelf");
    tabTo("input[value='mosaic.json']");
    tab.press(" ");
    tabTo("input[value='san-mai.json']");
    tab.press(" ");
    tabTo("#one-kiln button");
    tab.press("Enter");
    tab.until("document.querySelector('#fold-loads') !== null");
    tab.ask(UNFOLD);
    seenAndHit("one kiln");
  }

  /** At the fire, with the clock over and all unfolded, it is large enough for gloves. */
  @Test
  void atTheFire() throws Exception {
    begin("mosaic");
    tab.until(WHOLE);
    atTheFire(320, 640); // between them FireInBrowserTest works an evening
    atTheFire(1280, 800);
  }

  private void atTheFire(int width, int height) throws Exception {
    tab.size(width, height);
    tab.go(page.address() + "d/1/fire");
    tab.until(AtTheFire.WHOLE);
    if (tab.ask("document.getElementById('hold') === null").equals("true")) {
      tab.tap("button[value=start]");
      tab.until("document.getElementById('hold') !== null");
    }
    tab.ask(UNFOLD);
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
  @Test
  void theCardIsOneSheetAndTheCautionsAnother() throws Exception {
    begin("mosaic");
    tab.until(WHOLE);
    tab.go(page.address() + "d/1/card");
    tab.until("document.querySelector('.work') !== null");
    assertEquals(2, sheets(8.5, 11));
    assertEquals(2, sheets(8.27, 11.7));
    assertEquals("", tab.ask(Looks.LAYOUT));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
    tab.size(390, 844);
    assertEquals("", tab.ask(Looks.LAYOUT));
  }

  private int sheets(double width, double height) throws Exception {
    return Paper.sheets(tab.paper(width, height), 72 * width, 72 * height);
  }

  @Test
  void theBlankCardIsOneSheet() throws Exception {
    tab.go(page.address() + "blank");
    assertEquals(1, sheets(8.5, 11));
    assertEquals(1, sheets(8.27, 11.7));
    assertEquals("", tab.ask(Looks.LAYOUT));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
  }

  @Test
  void thePagesWithoutABilletToo() throws Exception {
    thePagesWithoutABilletToo(390, 844);
    thePagesWithoutABilletToo(640, 400);
  }

  private void thePagesWithoutABilletToo(int width, int height) throws Exception {
    tab.size(width, height);
    String sizes = "first=1084&second=15N20&layer=0.02+in&section=1/4+in";
    for (String at : new String[] {"shop", "pair", "pair?" + sizes, "pair?first=x&layer=-1"}) {
      tab.go(page.address() + at);
      tab.ask(UNFOLD);
      assertEquals("", tab.ask(Looks.LAYOUT), at);
      assertEquals("", tab.ask(Looks.SMALL), at);
      tab.run(Looks.axe());
      assertEquals("", tab.ask(Looks.AXE), at);
    }
  }
}
