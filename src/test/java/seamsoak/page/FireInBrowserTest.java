package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import seamsoak.billet.HeatDone;
import seamsoak.billet.Now;

/** A billet at the fire, on a phone's screen, worked by taps. */
@Tag("slow")
@Timeout(600)
class FireInBrowserTest extends InBrowser {
  private AtTheFire fire;

  @BeforeEach
  void toTheFire() throws Exception {
    Path file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    fire = AtTheFire.from(page, tab, file);
    // what is there for the Enter key alone has no width either
    assertEquals(
        "true",
        tab.ask("document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
  }

  @Test
  void aWholeEvening() throws Exception {
    fire.aWholeEvening();
  }

  /** Two heats are entered while the computer is away; both come to it, each once. */
  @Test
  void whatIsEnteredWhileTheComputerIsAwayIsSentOnce() throws Exception {
    tab.network(false);
    fire.tap("button[value=planned]");
    fire.until("Step 1 weld, heat 2 of 3");
    fire.open("#otherwise");
    fire.type("for", "8 min");
    fire.tap("#otherwise button");
    fire.until("Step 1 weld, heat 3 of 3");
    assertTrue(fire.said("#kept").contains("2 entries are kept here"), fire.said("#kept"));
    fire.picture("away");
    assertTrue(Now.of(fire.steps()).isEmpty(), "nothing has come");
    tab.network(true);
    tab.until("document.getElementById('kept').hidden");
    tab.until(AtTheFire.WHOLE);
    fire.until("Step 1 weld, heat 3 of 3");
    assertEquals(2, fire.steps().get(0).heats().get(0).done().size());
    assertEquals(
        "2250 F for 8 min", AtTheFire.held(fire.steps().get(0).heats().get(0).done().get(1)));
    assertEquals("[]", tab.ask("localStorage.getItem('seamsoak-kept')"));
  }

  /**
   * The clock shows what is left, however long the page stood still, and after it is loaded anew.
   */
  @Test
  void theClockIsRightAfterThePageStoodStill() throws Exception {
    fire.tap("button[value=start]");
    tab.until("document.querySelector('#hold .clock')?.textContent === '4:57'");
    tab.frozen(true);
    Thread.sleep(5000);
    tab.frozen(false);
    tab.until("/^4:5[0-2]$|^4:4/.test(document.querySelector('#hold .clock').textContent)");
    tab.ask("location.reload()");
    tab.until("/^4:[0-5]/.test(document.querySelector('#hold .clock')?.textContent)");
    // over: it is seen, heard and said
    fire.tap("button[value=stop]");
    tab.until("document.querySelector('button[value=start]') !== null");
    tab.ask("document.querySelector('input[name=minutes]').value = '0.05'");
    fire.tap("button[value=start]");
    tab.until("document.querySelector('#hold.over') !== null");
    tab.until("document.documentElement.dataset.rang > 0");
    tab.until("document.getElementById('status').textContent.includes('take it out')");
    fire.picture("over");
    fire.tap("button[value=now]");
    fire.until("Step 1 weld, heat 2 of 3");
    assertEquals(
        HeatDone.AsPlanned.class,
        fire.steps().get(0).heats().get(0).done().get(0).how().getClass());
  }
}
