package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import seamsoak.support.Screen;

/** A smith at the shelf and the bench who has a keyboard and no more. */
final class AtTheBench {
  static final String WHOLE =
      "document.getElementById('result')?.dataset.whole === 'yes' && document.getElementById('answer') !== null";
  private static final int MOST_ACTIONS = 15;

  private final Screen screen;
  private int presses;

  private AtTheBench(Screen screen) {
    this.screen = screen;
  }

  /** Before the shelf, by the link that a start prints. */
  static AtTheBench at(Page page, Screen screen) throws Exception {
    screen.go(page.link());
    screen.until("document.querySelector('h1')?.textContent === 'Billets'");
    return new AtTheBench(screen);
  }

  void press(String key) throws Exception {
    presses++;
    screen.press(key);
  }

  void type(String text) throws Exception {
    presses++;
    screen.type(text);
  }

  /** Presses the tab key until the focus is on something. */
  void tabTo(String selector) throws Exception {
    tabTo(selector, screen::press);
  }

  private void backTo(String selector) throws Exception {
    tabTo(selector, screen::pressBack);
  }

  private interface Pressing {
    void press(String key) throws Exception;
  }

  private void tabTo(String selector, Pressing hand) throws Exception {
    for (int i = 0; i < 200; i++) {
      presses++;
      hand.press("Tab");
      if (screen
          .ask("document.activeElement.matches(" + InBrowser.quoted(selector) + ")")
          .equals("true")) {
        return;
      }
    }
    throw new AssertionError("the tab key never comes to " + selector);
  }

  void begin(String pattern) throws Exception {
    tabTo("button[value=" + pattern + "]");
    press("Enter");
    screen.until("document.getElementById('bench') !== null");
  }

  String value(String id) throws Exception {
    return screen.ask("document.getElementById(" + InBrowser.quoted(id) + ").value");
  }

  /** Once all that was typed was taken. */
  void taken(int number) throws Exception {
    screen.until("document.getElementById('bench')?.elements.rev.value === '" + number + "'");
  }

  /** A new billet is answered, changed, answered again and saved. */
  void fromNewToAnswer(Path folder) throws Exception {
    begin("three-layers");
    screen.until(WHOLE);
    assertTrue(presses <= MOST_ACTIONS, presses + " keys from page to answer");
    tabTo("#at-stack\\.steels\\.0");
    type("15N20");
    press("Tab");
    taken(2);
    assertEquals(
        "at-stack.thickness.0", screen.ask("document.activeElement.id"), "the focus goes on");
    assertTrue(
        screen
            .ask("document.getElementById('stack.steels.0') || document.body.innerText")
            .contains("75Ni8: C0.75"));
    assertEquals("Taken.", screen.ask("document.getElementById('status').textContent"));
    screen.until(WHOLE);
    backTo("button[value='save']"); // past the last button Firefox leaves the page
    press("Enter");
    screen.until("document.getElementById('saved').textContent === 'Saved'");
    assertTrue(Files.readString(folder.resolve("new billet.json")).contains("\"15N20\""));
  }
}
