package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Looks;
import seamsoak.support.Tab;

/** The page in a browser, by keyboard; left out where no Chromium is installed. */
@Tag("slow")
@Timeout(300)
class PageInBrowserTest {
  private static final String WHOLE =
      "document.getElementById('result')?.dataset.whole === 'yes' && document.getElementById('answer') !== null";
  private static final int MOST_ACTIONS = 15;

  @TempDir private Path folder;
  @TempDir private Path browser;
  private Page page;
  private Tab tab;

  @BeforeEach
  void open() throws Exception {
    assumeTrue(Tab.installed().isPresent(), "no Chromium here");
    page = Pageful.open(folder);
    tab = Tab.open(Tab.installed().orElseThrow(), browser, 1280, 800);
    tab.go(page.link());
    tab.until("document.querySelector('h1')?.textContent === 'Billets'");
  }

  @AfterEach
  void close() throws Exception {
    if (tab != null) {
      tab.close();
      page.close();
    }
  }

  /** Presses the tab key until the focus is on something. */
  private void tabTo(String selector) throws Exception {
    for (int i = 0; i < 200; i++) {
      tab.press("Tab");
      if (tab.ask("document.activeElement.matches(" + quoted(selector) + ")").equals("true")) {
        return;
      }
    }
    throw new AssertionError("the tab key never comes to " + selector);
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  private void begin(String pattern) throws Exception {
    tabTo("button[value=" + pattern + "]");
    tab.press("Enter");
    tab.until("document.getElementById('bench') !== null");
  }

  private String value(String id) throws Exception {
    return tab.ask("document.getElementById(" + quoted(id) + ").value");
  }

  /** Once all that was typed was taken. */
  private void taken(int number) throws Exception {
    tab.until("document.getElementById('bench')?.elements.rev.value === '" + number + "'");
  }

  @Test
  void aNewBilletIsAnsweredByKeyboardAlone() throws Exception {
    begin("three-layers");
    tab.until(WHOLE);
    assertTrue(tab.presses() <= MOST_ACTIONS, tab.presses() + " keys from page to answer");
    tabTo("#at-stack\\.steels\\.0");
    tab.type("15N20");
    tab.press("Tab");
    taken(2);
    assertEquals("at-stack.thickness.0", tab.ask("document.activeElement.id"), "the focus goes on");
    assertTrue(
        tab.ask("document.getElementById('stack.steels.0') || document.body.innerText")
            .contains("75Ni8: C0.75"));
    assertEquals("Taken.", tab.ask("document.getElementById('status').textContent"));
    tab.until(WHOLE);
    tabTo("button[value='save']:not(:disabled), button[value='save']");
    tab.press("Enter");
    tab.until("document.getElementById('saved').textContent === 'Saved'");
    assertTrue(Files.readString(folder.resolve("new billet.json")).contains("\"15N20\""));
  }

  @Test
  void whatIsWrongIsToldAtOnceAndGoesWhenItIsMended() throws Exception {
    begin("three-layers");
    tabTo("#at-steps\\.0\\.heats\\.0\\.at");
    tab.type("hot");
    tab.press("Tab");
    taken(2);
    tab.until("document.querySelector('#faults h2')?.textContent === 'One thing to mend'");
    assertEquals(
        "true",
        tab.ask("document.getElementById('at-steps.0.heats.0.at').getAttribute('aria-invalid')"));
    tabTo("#faults a, a[href='#at-steps.0.heats.0.at']");
    tab.press("Enter");
    assertEquals("at-steps.0.heats.0.at", tab.ask("document.activeElement.id"));
    tab.type("2150");
    tab.press("Enter"); // takes the field and presses no button
    taken(3);
    tab.until("document.querySelector('#faults h2') === null");
    assertEquals("Not saved", tab.ask("document.getElementById('saved').textContent"));
    tab.until(WHOLE);
  }

  @Test
  void stepsAreAddedMovedAndTakenBackByButtons() throws Exception {
    begin("three-layers");
    tabTo("button[value='copy steps[1]']");
    tab.press("Enter");
    taken(2);
    assertEquals("5", tab.ask("document.querySelectorAll('.step').length"));
    assertEquals("copy steps[1]", tab.ask("document.activeElement.value"), "the focus stays");
    tabTo("button[value='out steps[2]']");
    tab.press(" ");
    taken(3);
    tabTo("button[value='undo'], .bar a");
    tab.ask("document.querySelector('button[value=undo]').focus()");
    tab.press("Enter");
    taken(4);
    assertEquals("5", tab.ask("document.querySelectorAll('.step').length"));
    tab.press("Enter");
    taken(5);
    assertEquals("4", tab.ask("document.querySelectorAll('.step').length"));
    tab.ask("document.querySelector('button[value=redo]').focus()");
    tab.press("Enter");
    taken(6);
    assertEquals("5", tab.ask("document.querySelectorAll('.step').length"));
    tab.until(WHOLE);
  }

  /** Typed faster than the program answers: nothing of it is lost. */
  @Test
  void whatIsTypedMeanwhileStays() throws Exception {
    begin("mosaic");
    tabTo("#at-steps\\.0\\.heats\\.0\\.at");
    tab.type("2240");
    tab.press("Tab");
    tab.type("6");
    tab.press("Tab");
    tab.type("4");
    tab.press("Tab");
    tab.until("document.getElementById('bench').elements.rev.value === '4'");
    assertEquals("2240", value("at-steps.0.heats.0.at"));
    assertEquals("6", value("at-steps.0.heats.0.for"));
    assertEquals("4", value("at-steps.0.heats.0.times"));
    tab.until(WHOLE);
  }

  @Test
  void allOfItWorksWithoutTheScript() throws Exception {
    tab.scripts(false);
    tabTo("button[value=three-layers]");
    tab.press("Enter");
    tab.until("document.getElementById('bench') !== null");
    tabTo("#at-steps\\.0\\.heats\\.0\\.at");
    tab.type("2150");
    tabTo("#at-steps\\.0\\.heats\\.0\\.for");
    tab.type("6");
    tab.press("Enter"); // the first button keeps what was typed
    taken(2);
    tab.until("document.readyState === 'complete'");
    assertEquals("2150", value("at-steps.0.heats.0.at"));
    assertEquals("6", value("at-steps.0.heats.0.for"));
    tabTo("button[value='later steps[0]']");
    tab.press("Enter");
    taken(3);
    tab.until("document.readyState === 'complete'");
    assertTrue(tab.ask("document.getElementById('faults').innerText").contains("mend"));
    tabTo("button[value=undo]");
    tab.press("Enter");
    taken(4);
    tab.until("document.readyState === 'complete'");
    tabTo("#result a");
    tab.press("Enter");
    tab.until("location.pathname.endsWith('/answer')");
    tab.until(WHOLE);
  }

  /** A page of somebody else in the same browser can do nothing and see nothing. */
  @Test
  void aForeignPageIsKeptOut() throws Exception {
    begin("three-layers");
    taken(1);
    String desk = tab.ask("location.pathname");
    HttpServer evil =
        HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), 0), 0);
    String target = page.address().replaceFirst("/$", "");
    String html =
        """
        <!DOCTYPE html><title>evil</title>
        <iframe id="f" name="f"></iframe>
        <form id="a" target="f" method="post" action="%1$s/end"></form>
        <form id="b" target="f" method="post" action="%1$s%2$s/drop"></form>
        <img id="i" src="%1$s%2$s/billet.json">
        <script>
        document.getElementById('a').submit();
        document.getElementById('b').submit();
        const tries = ['%1$s/', '%1$s%2$s/billet.json'].map(u => fetch(u, {credentials: 'include'})
          .then(r => 'read ' + r.status, () => 'refused'));
        tries.push(fetch('%1$s%2$s/drop', {method: 'POST', mode: 'no-cors', credentials: 'include'})
          .then(r => r.type, () => 'refused'));
        Promise.all(tries).then(t => document.title = t.join());
        </script>
        """
            .formatted(target, desk);
    evil.createContext(
        "/",
        e -> {
          byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
          e.getResponseHeaders().set("Content-Type", "text/html");
          e.sendResponseHeaders(200, bytes.length);
          e.getResponseBody().write(bytes);
          e.close();
        });
    evil.start();
    try {
      tab.go("http://127.0.0.1:" + evil.getAddress().getPort() + "/");
      tab.until("document.title.includes(',')");
      String tried = tab.ask("document.title");
      assertTrue(tried.startsWith("refused,refused,"), tried);
      Thread.sleep(500);
    } finally {
      evil.stop(0);
    }
    tab.go(target + desk);
    taken(1);
    assertEquals("1-3/8", value("at-stack.width"));
  }

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

  @Test
  void whenTheProgramHasEndedThePageSaysSoAndKeepsWhatIsTyped() throws Exception {
    begin("three-layers");
    tab.until(WHOLE);
    page.close();
    tab.ask("document.getElementById('at-stack.width').focus()");
    tab.type("1-1/4");
    tab.press("Tab");
    tab.until("document.getElementById('notice')?.textContent.includes('does not answer')");
    assertEquals("1-1/4", value("at-stack.width"));
  }
}
