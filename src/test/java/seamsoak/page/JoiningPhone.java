package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import seamsoak.billet.HeatDone;
import seamsoak.support.Looks;
import seamsoak.support.Screen;

/** A phone that joins, runs the clock and enters heats. */
final class JoiningPhone {
  private JoiningPhone() {}

  /** By the link and the code that the smith's screen shows; then the smith lets it out again. */
  static void entersAHeat(Screen phone, Path folder) throws Exception {
    System.setProperty("seamsoak.shop", PhonesTest.SHOP);
    Path file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    try (Page page = Pageful.open(folder)) {
      Visitor smith = Visitor.in(page);
      smith.post("/open", Map.of("file", "mosaic.json"));
      smith.post("/phones/on", Map.of("address", PhonesTest.SHOP));
      PhonesTest.Screen shown = PhonesTest.screen(smith);
      AtTheFire fire = new AtTheFire(phone, file);
      phone.go("http://" + shown.authority() + shown.target());
      phone.until("document.getElementById('code') !== null");
      fire.type("code", shown.code());
      phone.tap("button");
      phone.until("document.querySelector('h1').textContent === 'Billets'");
      phone.tap("a.button");
      phone.until(AtTheFire.WHOLE);
      assertEquals("", phone.ask(Looks.LAYOUT));
      phone.tap("button[value=start]");
      phone.until("/^4:5/.test(document.querySelector('#hold .clock')?.textContent)");
      phone.tap("button[value=planned]");
      fire.until("Step 1 weld, heat 2 of 3");
      phone.until(AtTheFire.WHOLE);
      fire.open("#otherwise");
      fire.type("at", "2270");
      fire.type("for", "7");
      phone.press("Enter"); // which takes what was typed and is no tick
      fire.until("Step 1 weld, heat 3 of 3");
      List<HeatDone> done = fire.steps().get(0).heats().get(0).done();
      assertEquals(2, done.size());
      assertEquals("2270 F for 7 min", AtTheFire.held(done.get(1)));
      assertEquals(PhonesTest.SHOP, URI.create(phone.ask("location.href")).getHost());
      smith.post("/phones/off", Map.of());
      phone.until("!document.getElementById('kept').hidden");
    } finally {
      System.clearProperty("seamsoak.shop");
    }
  }
}
