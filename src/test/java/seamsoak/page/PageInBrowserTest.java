package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The page in a browser, by keyboard. */
@Tag("slow")
@Timeout(300)
class PageInBrowserTest extends InBrowser {
  @Test
  void aNewBilletIsAnsweredByKeyboardAlone() throws Exception {
    bench.fromNewToAnswer(folder);
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

  /** What another soak would come to is known by then: keys and pointer only show it. */
  @Test
  void anotherSoakIsLookedAtAtNoCost() throws Exception {
    begin("mosaic");
    tab.until(WHOLE);
    tabTo("a[href='#fold-soak']");
    tab.press("Enter");
    tabTo("#soak-slider");
    String says = "document.getElementById('soak-says').textContent";
    assertTrue(tab.ask(says).contains("This is the soak advised, for "), tab.ask(says));
    String cost = tab.ask(says).replaceAll(".*grain about ASTM ([0-9.]+) .*", "$1");
    assertTrue(
        tab.ask("document.querySelector('.why').textContent").contains("grain about ASTM " + cost),
        "one soak costs the same in both places");
    tab.press("ArrowDown");
    tab.press("ArrowDown");
    assertTrue(tab.ask(says).contains("longer, grain "), tab.ask(says));
    assertEquals(
        "2",
        tab.ask("[...document.querySelectorAll('tr[data-soak]')].filter(r => !r.hidden).length"));
    String words = tab.ask("document.getElementById('soak-slider').getAttribute('aria-valuetext')");
    assertTrue(tab.ask(says).startsWith("At " + words + ": "), words);
    String mark = "document.querySelector('#fold-soak .mark').getAttribute('x1')";
    String before = tab.ask(mark);
    tab.press("ArrowUp");
    assertTrue(Double.parseDouble(tab.ask(mark)) > Double.parseDouble(before));
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
    String target = page.address().replaceFirst("/$", "");
    try (ForeignPage evil = new ForeignPage("127.0.0.1", target, desk)) {
      evil.isKeptOut(tab);
    }
    tab.go(target + desk);
    taken(1);
    assertEquals("1-3/8", value("at-stack.width"));
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
