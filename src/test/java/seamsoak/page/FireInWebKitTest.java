package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.billet.HeatDone;
import seamsoak.support.Walks;
import seamsoak.support.WebKit;

/**
 * A phone of the other engine joins, runs the clock and enters a heat; left out where WebKit, its
 * driver or a screen to draw on is not installed.
 */
@Tag("slow")
@Timeout(600)
class FireInWebKitTest {
  private static final String SHOP = "127.77.0.2";

  @TempDir private Path folder;
  @TempDir private Path browser;

  @Test
  void aPhoneJoinsAndEntersAHeat() throws Exception {
    assumeTrue(WebKit.installed(), "no WebKit here");
    System.setProperty("seamsoak.shop", SHOP);
    Path file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    try (Page page = Pageful.open(folder);
        WebKit phone = WebKit.open(browser, 99)) {
      Visitor smith = Visitor.in(page);
      smith.post("/open", java.util.Map.of("file", "mosaic.json"));
      smith.post("/phones/on", java.util.Map.of("address", SHOP));
      String screen = smith.get("/phones").body();
      Matcher link =
          Pattern.compile("http://127\\.77\\.0\\.2:[0-9]+/join\\?k=[\\w-]{43}").matcher(screen);
      Matcher code = Pattern.compile("class=\"code\">([0-9]{3}) ([0-9]{3})<").matcher(screen);
      assertTrue(link.find() && code.find(), screen);
      phone.go(link.group());
      phone.until("document.getElementById('code') !== null");
      phone.type("#code", code.group(1) + code.group(2));
      phone.tap("button");
      phone.until("document.querySelector('h1').textContent === 'Billets'");
      phone.tap("a.button");
      phone.until(FireInBrowserTest.WHOLE_AT_THE_FIRE);
      assertEquals("", phone.ask(seamsoak.support.Looks.LAYOUT));
      phone.tap("button[value=start]");
      phone.until("/^4:5/.test(document.querySelector('#hold .clock')?.textContent)");
      phone.tap("button[value=planned]");
      phone.until(
          "document.getElementById('task-title').textContent === 'Step 1 weld, heat 2 of 3'");
      phone.until(FireInBrowserTest.WHOLE_AT_THE_FIRE);
      phone.tap("#otherwise > summary");
      phone.type("#at", "2270");
      phone.type("#for", "7\uE007"); // Enter, which takes what was typed and is no tick
      phone.until(
          "document.getElementById('task-title').textContent === 'Step 1 weld, heat 3 of 3'");
      List<HeatDone> done =
          Walks.billet(Files.readString(file)).steps().get(0).heats().get(0).done();
      assertEquals(2, done.size());
      assertTrue(done.get(1).how() instanceof HeatDone.Held, done.toString());
      // a secure context is not had on plain http, and nothing here needs one
      assertEquals("false", phone.ask("isSecureContext && !/^http:..127/.test(location.href)"));
      assertEquals(SHOP, URI.create(phone.ask("location.href")).getHost());
      smith.post("/phones/off", java.util.Map.of());
      phone.until("!document.getElementById('kept').hidden");
    } finally {
      System.clearProperty("seamsoak.shop");
    }
  }
}
