package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import seamsoak.billet.HeatDone;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.support.Ran;
import seamsoak.support.Screen;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;

/** A smith at the fire with a screen: what is tapped there, and what has come to the file. */
final class AtTheFire {
  static final String WHOLE =
      "document.getElementById('answer') !== null && !document.querySelector('.state')";

  private final Screen screen;
  private final Path file;
  private int taps;

  AtTheFire(Screen screen, Path file) {
    this.screen = screen;
    this.file = file;
  }

  /** From the bench to the fire, on a phone's screen. */
  static AtTheFire from(Page page, Screen screen, Path file) throws Exception {
    page.lay(file.getFileName().toString());
    screen.size(390, 844);
    screen.go(page.address());
    screen.until("document.getElementById('bench') !== null");
    AtTheFire there = new AtTheFire(screen, file);
    there.tap(".bar a[href$='/fire']");
    screen.until(WHOLE);
    return there;
  }

  /** Taps what is there, in the middle of it. */
  void tap(String selector) throws Exception {
    taps++;
    screen.tap(selector);
  }

  void open(String details) throws Exception {
    if (!screen
        .ask("document.querySelector(" + InBrowser.quoted(details) + ").open")
        .equals("true")) {
      tap(details + " > summary");
    }
  }

  void until(String title) throws Exception {
    screen.until(
        "document.getElementById('task-title')?.textContent === " + InBrowser.quoted(title));
  }

  String said(String selector) throws Exception {
    return screen.ask("document.querySelector(" + InBrowser.quoted(selector) + ").innerText");
  }

  void type(String id, String text) throws Exception {
    tap("#" + id);
    screen.type(text);
  }

  List<Step> steps() throws Exception {
    return Walks.billet(Files.readString(file)).steps();
  }

  static String held(HeatDone done) {
    HeatDone.Held held = (HeatDone.Held) done.how();
    return held.at().format(UnitSystem.US) + " for " + held.hold().format(UnitSystem.US);
  }

  /** Five heats, one of them missed and one taken back, a log, two test etches, and the soak. */
  void aWholeEvening() throws Exception {
    until("Step 1 weld, heat 1 of 3");
    tap("button[value=planned]");
    until("Step 1 weld, heat 2 of 3");
    assertEquals(1, Now.of(steps()).orElseThrow().heats());
    screen.until(WHOLE);
    // by the clock
    tap("button[value=start]");
    screen.until("document.querySelector('#hold .clock') !== null");
    tap("button[value=now]");
    until("Step 1 weld, heat 3 of 3");
    // missed by 5 min and 100 F: what now
    open("#otherwise");
    type("longer", "5");
    type("hotter", "100 F");
    tap("#otherwise button");
    until("Step 2 draw, heat 1 of 6");
    screen.until("document.getElementById('changed')?.innerText.includes('2350 F')");
    tap("button[name=last]");
    until("Step 1 weld, heat 3 of 3");
    screen.until(WHOLE);
    open("#otherwise");
    type("at", "2270");
    type("for", "7 min");
    tap("#otherwise button");
    until("Step 2 draw, heat 1 of 6");
    assertEquals("2270 F for 7 min", held(steps().get(0).heats().get(0).done().get(2)));
    // further than that, by a list
    open("#upto");
    screen.ask("document.getElementById('step').value = '14'");
    tap("#upto button");
    until("Step 15 roll");
    screen.until(WHOLE);
    tap("button[value=planned]");
    screen.until("document.getElementById('task-title').textContent !== 'Step 15 roll'");
    screen.until(WHOLE);
    // the log of a heat, with what it does not say
    tap("a[href$='fire.log']");
    screen.until("document.getElementById('log') !== null");
    screen.choose("#log", Path.of("alloy-data/logs/forge.csv").toAbsolutePath());
    tap("form[enctype] button");
    screen.until("document.getElementById('tip') !== null");
    picture("log-asks");
    screen.ask("document.getElementById('tip').value = 'STEEL'");
    screen.ask("document.getElementById('meant').value = '1.2'");
    tap("main section button");
    screen.until("document.getElementById('worth') !== null");
    picture("log-worth");
    tap("input[name=replace]");
    tap("button[value=write]");
    screen.until(WHOLE);
    assertTrue(
        steps().get(0).heats().get(0).done().get(1).how() instanceof HeatDone.Logged, "by its log");
    // it is still there: from the etch to the next step
    taps = 0;
    open("#etch");
    // on the drawing of the section
    taps++;
    screen.tap(".tap", 0.5, 0.2);
    screen.until("document.getElementById('tapped') !== null");
    String seam =
        screen.ask("document.querySelector('[name=where]:checked').closest('label').innerText");
    assertEquals("Tapped: " + seam.strip() + ".", said("#tapped"));
    tap(".looks label:nth-child(2)");
    picture("etch");
    tap("#etch .go button");
    screen.until("document.getElementById('changed') !== null");
    screen.until(WHOLE);
    picture("still-there");
    String honest = said("section[aria-labelledby=answer-title]");
    assertTrue(honest.contains("You saw a faint line"), honest);
    assertTrue(taps <= 6, taps + " taps");
    // what is advised, until the soak is done
    for (int i = 0; i < 4 && steps().stream().noneMatch(s -> s.kind() == Step.Kind.SOAK); i++) {
      String title = said("#task-title");
      tap("button[value=planned]");
      screen.until(
          "document.getElementById('task-title').textContent !== " + InBrowser.quoted(title));
      screen.until(WHOLE);
    }
    Step soak = steps().get(steps().size() - 1);
    assertEquals(Step.Kind.SOAK, soak.kind());
    assertTrue(Now.of(steps()).orElseThrow().stepDone());
    open("#etch");
    tap(".places label:last-child");
    tap(".looks label:nth-child(1)");
    tap("#etch .go button");
    screen.until("document.getElementById('changed') !== null");
    screen.until(WHOLE);
    assertEquals(1, steps().get(steps().size() - 1).mark().seen().size());
    picture("evening");
    // the file has it all, and the command line says the same
    Ran ran = Ran.run("soak", file.toString(), "--units", "us", "--samples", "" + Pageful.CASES);
    String headline = said("#answer").replace("°", "").replaceAll("\\s+", " ");
    assertTrue(ran.out().replaceAll("\\s+", " ").contains(headline), headline + " / " + ran.out());
    assertFalse(Files.exists(file.resolveSibling("mosaic.json.part")));
  }

  /** Kept where somebody wants to look at it. */
  void picture(String name) throws Exception {
    String to = System.getProperty("pictures");
    if (to != null) {
      Files.write(Path.of(to, name + ".png"), screen.picture());
    }
  }
}
