package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import seamsoak.billet.HeatDone;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.support.Ran;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;

/** A billet at the fire, on a phone's screen, worked by taps. */
@Tag("slow")
@Timeout(600)
class FireInBrowserTest extends InBrowser {
  static final String WHOLE_AT_THE_FIRE =
      "document.getElementById('answer') !== null && !document.querySelector('.state')";

  private Path file;
  private int taps;

  @BeforeEach
  void toTheFire() throws Exception {
    file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    page.lay("mosaic.json");
    tab.size(390, 844);
    tab.go(page.address());
    tab.until("document.getElementById('bench') !== null");
    tap(".bar a[href$='/fire']");
    tab.until(WHOLE_AT_THE_FIRE);
    // what is there for the Enter key alone has no width either
    assertEquals(
        "true",
        tab.ask("document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
  }

  /** Taps what is there, in the middle of it. */
  private void tap(String selector) throws Exception {
    taps++;
    tab.tap(selector);
  }

  private void open(String details) throws Exception {
    if (!tab.ask("document.querySelector(" + quoted(details) + ").open").equals("true")) {
      tap(details + " > summary");
    }
  }

  private void until(String title) throws Exception {
    tab.until("document.getElementById('task-title')?.textContent === " + quoted(title));
  }

  private String said(String selector) throws Exception {
    return tab.ask("document.querySelector(" + quoted(selector) + ").innerText");
  }

  private void type(String id, String text) throws Exception {
    tap("#" + id);
    tab.type(text);
  }

  private List<Step> steps() throws Exception {
    return Walks.billet(Files.readString(file)).steps();
  }

  private static String held(HeatDone done) {
    HeatDone.Held held = (HeatDone.Held) done.how();
    return held.at().format(UnitSystem.US) + " for " + held.hold().format(UnitSystem.US);
  }

  @Test
  void aWholeEvening() throws Exception {
    until("Step 1 weld, heat 1 of 3");
    tap("button[value=planned]");
    until("Step 1 weld, heat 2 of 3");
    assertEquals(1, Now.of(steps()).orElseThrow().heats());
    tab.until(WHOLE_AT_THE_FIRE);
    // by the clock
    tap("button[value=start]");
    tab.until("document.querySelector('#hold .clock') !== null");
    tap("button[value=now]");
    until("Step 1 weld, heat 3 of 3");
    // missed by 5 min and 100 F: what now
    open("#otherwise");
    type("longer", "5");
    type("hotter", "100 F");
    tap("#otherwise button");
    until("Step 2 draw, heat 1 of 6");
    tab.until("document.getElementById('changed')?.innerText.includes('2350 F')");
    tap("button[name=last]");
    until("Step 1 weld, heat 3 of 3");
    tab.until(WHOLE_AT_THE_FIRE);
    open("#otherwise");
    type("at", "2270");
    type("for", "7 min");
    tap("#otherwise button");
    until("Step 2 draw, heat 1 of 6");
    assertEquals("2270 F for 7 min", held(steps().get(0).heats().get(0).done().get(2)));
    // further than that, by a list
    open("#upto");
    tab.ask("document.getElementById('step').value = '14'");
    tap("#upto button");
    until("Step 15 roll");
    tab.until(WHOLE_AT_THE_FIRE);
    tap("button[value=planned]");
    tab.until("document.getElementById('task-title').textContent !== 'Step 15 roll'");
    tab.until(WHOLE_AT_THE_FIRE);
    // the log of a heat, with what it does not say
    tap("a[href$='fire.log']");
    tab.until("document.getElementById('log') !== null");
    tab.choose("#log", Path.of("alloy-data/logs/forge.csv").toAbsolutePath());
    tap("form[enctype] button");
    tab.until("document.getElementById('tip') !== null");
    picture("log-asks");
    tab.ask("document.getElementById('tip').value = 'STEEL'");
    tab.ask("document.getElementById('meant').value = '1.2'");
    tap("main section button");
    tab.until("document.getElementById('worth') !== null");
    picture("log-worth");
    tap("input[name=replace]");
    tap("button[value=write]");
    tab.until(WHOLE_AT_THE_FIRE);
    assertTrue(
        steps().get(0).heats().get(0).done().get(1).how() instanceof HeatDone.Logged, "by its log");
    // it is still there: from the etch to the next step
    taps = 0;
    open("#etch");
    // on the drawing of the section
    taps++;
    tab.tap(".tap", 0.5, 0.2);
    tab.until("document.getElementById('tapped') !== null");
    String seam =
        tab.ask("document.querySelector('[name=where]:checked').closest('label').innerText");
    assertEquals("Tapped: " + seam.strip() + ".", said("#tapped"));
    tap(".looks label:nth-child(2)");
    picture("etch");
    tap("#etch .go button");
    tab.until("document.getElementById('changed') !== null");
    tab.until(WHOLE_AT_THE_FIRE);
    picture("still-there");
    String honest = said("section[aria-labelledby=answer-title]");
    assertTrue(honest.contains("You saw a faint line"), honest);
    assertTrue(taps <= 6, taps + " taps");
    // what is advised, until the soak is done
    for (int i = 0; i < 4 && steps().stream().noneMatch(s -> s.kind() == Step.Kind.SOAK); i++) {
      String title = said("#task-title");
      tap("button[value=planned]");
      tab.until("document.getElementById('task-title').textContent !== " + quoted(title));
      tab.until(WHOLE_AT_THE_FIRE);
    }
    Step soak = steps().get(steps().size() - 1);
    assertEquals(Step.Kind.SOAK, soak.kind());
    assertTrue(Now.of(steps()).orElseThrow().stepDone());
    open("#etch");
    tap(".places label:last-child");
    tap(".looks label:nth-child(1)");
    tap("#etch .go button");
    tab.until("document.getElementById('changed') !== null");
    tab.until(WHOLE_AT_THE_FIRE);
    assertEquals(1, steps().get(steps().size() - 1).mark().seen().size());
    picture("evening");
    // the file has it all, and the command line says the same
    Ran ran = Ran.run("soak", file.toString(), "--units", "us", "--samples", "" + Pageful.CASES);
    String headline = said("#answer").replace("°", "").replaceAll("\\s+", " ");
    assertTrue(ran.out().replaceAll("\\s+", " ").contains(headline), headline + " / " + ran.out());
    assertFalse(Files.exists(folder.resolve("mosaic.json.part")));
  }

  /** Two heats are entered while the computer is away; both come to it, each once. */
  @Test
  void whatIsEnteredWhileTheComputerIsAwayIsSentOnce() throws Exception {
    tab.network(false);
    tap("button[value=planned]");
    until("Step 1 weld, heat 2 of 3");
    open("#otherwise");
    type("for", "8 min");
    tap("#otherwise button");
    until("Step 1 weld, heat 3 of 3");
    assertTrue(said("#kept").contains("2 entries are kept here"), said("#kept"));
    picture("away");
    assertTrue(Now.of(steps()).isEmpty(), "nothing has come");
    tab.network(true);
    tab.until("document.getElementById('kept').hidden");
    tab.until(WHOLE_AT_THE_FIRE);
    until("Step 1 weld, heat 3 of 3");
    assertEquals(2, steps().get(0).heats().get(0).done().size());
    assertEquals("2250 F for 8 min", held(steps().get(0).heats().get(0).done().get(1)));
    assertEquals("[]", tab.ask("localStorage.getItem('seamsoak-kept')"));
  }

  /**
   * The clock shows what is left, however long the page stood still, and after it is loaded anew.
   */
  @Test
  void theClockIsRightAfterThePageStoodStill() throws Exception {
    tap("button[value=start]");
    tab.until("document.querySelector('#hold .clock')?.textContent === '4:57'");
    tab.frozen(true);
    Thread.sleep(5000);
    tab.frozen(false);
    tab.until("/^4:5[0-2]$|^4:4/.test(document.querySelector('#hold .clock').textContent)");
    tab.ask("location.reload()");
    tab.until("/^4:[0-5]/.test(document.querySelector('#hold .clock')?.textContent)");
    // over: it is seen, heard and said
    tap("button[value=stop]");
    tab.until("document.querySelector('button[value=start]') !== null");
    tab.ask("document.querySelector('input[name=minutes]').value = '0.05'");
    tap("button[value=start]");
    tab.until("document.querySelector('#hold.over') !== null");
    tab.until("document.documentElement.dataset.rang > 0");
    tab.until("document.getElementById('status').textContent.includes('take it out')");
    picture("over");
    tap("button[value=now]");
    until("Step 1 weld, heat 2 of 3");
    assertEquals(
        HeatDone.AsPlanned.class, steps().get(0).heats().get(0).done().get(0).how().getClass());
  }

  /** Kept where somebody wants to look at it. */
  private void picture(String name) throws Exception {
    String to = System.getProperty("pictures");
    if (to != null) {
      Files.write(Path.of(to, name + ".png"), tab.picture());
    }
  }
}
