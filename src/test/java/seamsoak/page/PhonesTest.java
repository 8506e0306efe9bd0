package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Phones in the shop: who comes in, what they may, and how they are let out. */
@Timeout(120)
class PhonesTest extends FormsOnly {
  /** Stands in for the shop's network. */
  static final String SHOP = "127.77.0.1";

  /** What is on the screen for one phone. */
  record Screen(String authority, String target, String code) {}

  @BeforeEach
  void lay() throws IOException {
    System.setProperty("seamsoak.shop", SHOP);
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), folder.resolve("mosaic.json"));
    assertEquals("/d/1", smith.post("/open", Map.of("file", "mosaic.json")).header("Location"));
  }

  @AfterEach
  void away() {
    System.clearProperty("seamsoak.shop");
  }

  private Screen on() throws IOException {
    assertEquals(303, smith.post("/phones/on", Map.of("address", SHOP)).status());
    return screen(smith);
  }

  /** What the smith's screen shows for the next phone. */
  static Screen screen(Visitor smith) throws IOException {
    String body = smith.get("/phones").body();
    Matcher link =
        Pattern.compile("http://(127\\.77\\.0\\.1:[0-9]+)(/join\\?k=[\\w-]{43})").matcher(body);
    Matcher code = Pattern.compile("class=\"code\">([0-9]{3}) ([0-9]{3})<").matcher(body);
    assertTrue(link.find() && code.find(), body);
    return new Screen(link.group(1), link.group(2), code.group(1) + code.group(2));
  }

  private static Visitor.Reply tried(Visitor phone, Screen screen, String code) throws IOException {
    return phone.post("/join", Map.of("k", screen.target().replaceFirst(".*=", ""), "code", code));
  }

  static Visitor joined(Screen screen) throws IOException {
    Visitor phone = new Visitor(screen.authority());
    assertEquals(200, phone.get(screen.target()).status());
    Visitor.Reply in = tried(phone, screen, screen.code());
    assertEquals(303, in.status(), in.body());
    phone.headers.put("Cookie", in.header("Set-Cookie").replaceFirst(";.*", ""));
    return phone;
  }

  static Map<String, String> entry(String id, String step, String heat, Map<String, String> more) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("id", id);
    form.put("billet", "mosaic.json");
    form.put("what", "DONE");
    form.put("step", step);
    form.put("heat", heat);
    form.put("kind", "weld");
    form.putAll(more);
    return form;
  }

  @Test
  void theyAreOffAtEachStart() throws IOException {
    String body = smith.get("/phones").body();
    assertTrue(body.contains("<h2>Off</h2>"), body);
    assertTrue(body.contains("It is plain http"), body);
    assertTrue(body.contains(SHOP), body);
    Visitor stranger = new Visitor(SHOP + ":" + 20_000);
    assertThrows(IOException.class, () -> stranger.get("/"));
    assertEquals(409, smith.post("/phones/on", Map.of("address", "8.8.8.8")).status());
  }

  @Test
  void aPhoneComesInEntersAndIsLetOut() throws IOException {
    Screen screen = on();
    Visitor stranger = new Visitor(screen.authority());
    assertEquals(403, stranger.get("/").status());
    assertEquals(403, stranger.get("/d/1/fire").status());
    Visitor phone = joined(screen);
    assertTrue(phone.get("/").body().contains("mosaic at the fire"));
    assertTrue(phone.get("/d/1/fire").body().contains("Step 1 weld, heat 1 of 3"));
    assertEquals(200, phone.get("/d/1/fire.etch").status(), "a phone has the camera");
    assertEquals(200, phone.get("/d/1/fire.png").status());
    assertEquals(403, stranger.get("/d/1/fire.png").status());
    Visitor.Reply entered =
        phone.post(
            "/d/1/fire.enter",
            entry("a".repeat(20), "1", "1", Map.of("at", "2270", "for", "7 min")));
    assertEquals(303, entered.status(), entered.body());
    String text = Files.readString(folder.resolve("mosaic.json"));
    assertTrue(text.contains("\"at\": \"2270 F\""), text);
    assertTrue(smith.get("/phones").body().contains("One phone is in."));
    assertEquals(303, smith.post("/phones/off", Map.of()).status());
    assertThrows(IOException.class, () -> phone.get("/d/1/fire"));
    Screen again = on();
    assertEquals(403, new Visitor(again.authority()).get("/d/1/fire").status());
    phone.headers.put("Host", again.authority());
    assertEquals(403, phone.get("/d/1/fire").status(), "the old cookie opens no more");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/d/1",
        "/d/1/billet.json",
        "/d/1/answer",
        "/d/1/news",
        "/d/1/fire.log",
        "/phones",
        "/in?t=x",
        "/again",
        "/news",
        "/d/../d/1",
        "/d/1/"
      })
  void aPhoneLooksAtNothingElse(String target) throws IOException {
    Visitor phone = joined(on());
    Visitor.Reply reply = phone.get(target);
    assertEquals(403, reply.status(), target + reply.body());
    assertFalse(reply.body().contains("1084"), reply.body());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/end",
        "/new",
        "/open",
        "/d/1/edit",
        "/d/1/save",
        "/d/1/drop",
        "/d/1/fire.log",
        "/phones/on",
        "/phones/off",
        "/phones/another",
        "/upload"
      })
  void aPhoneDoesNothingElse(String target) throws IOException {
    Screen screen = on();
    Visitor phone = joined(screen);
    String before = Files.readString(folder.resolve("mosaic.json"));
    assertEquals(403, phone.post(target, Map.of("rev", "1", "act", "save")).status());
    assertEquals(before, Files.readString(folder.resolve("mosaic.json")));
    assertEquals(200, phone.get("/d/1/fire").status());
    assertEquals(200, smith.get("/").status());
  }

  @Test
  void aKeyIsGoodForOnePhone() throws IOException {
    Screen screen = on();
    joined(screen);
    Visitor second = new Visitor(screen.authority());
    assertEquals(410, second.get(screen.target()).status());
    Visitor.Reply reply = tried(second, screen, screen.code());
    assertEquals(410, reply.status());
    assertTrue(reply.body().contains("press Off"), reply.body());
    smith.post("/phones/another", Map.of());
    Screen other = screen(smith);
    assertNotEquals(screen.target(), other.target());
    joined(other);
    assertTrue(smith.get("/phones").body().contains("2 phones are in."));
  }

  @Test
  void fiveWrongCodesEndAnInvitation() throws IOException {
    Screen screen = on();
    Visitor phone = new Visitor(screen.authority());
    String wrong = screen.code().equals("000000") ? "000001" : "000000";
    for (int i = 0; i < 4; i++) {
      assertEquals(403, tried(phone, screen, wrong).status());
    }
    assertTrue(tried(phone, screen, wrong).body().contains("five times"));
    assertEquals(403, tried(phone, screen, screen.code()).status(), "not even the right one");
    Visitor.Reply none = phone.post("/join", Map.of("k", "A".repeat(43), "code", screen.code()));
    assertEquals(403, none.status());
    smith.post("/phones/another", Map.of());
    joined(screen(smith));
  }

  @Test
  void aStolenCookieOpensOnlyItsOwnDoor() throws IOException {
    Screen screen = on();
    Visitor phone = joined(screen);
    Visitor atBench = new Visitor(smith.authority);
    String value = phone.headers.get("Cookie").replaceFirst(".*=", "");
    String name = smith.headers.get("Cookie").replaceFirst("=.*", "");
    atBench.headers.put("Cookie", name + "=" + value);
    assertEquals(403, atBench.get("/").status());
    Visitor asPhone = new Visitor(screen.authority());
    String smiths = smith.headers.get("Cookie").replaceFirst(".*=", "");
    asPhone.headers.put(
        "Cookie", phone.headers.get("Cookie").replaceFirst("=.*", "") + "=" + smiths);
    assertEquals(403, asPhone.get("/d/1/fire").status());
    // in a page of somebody else it is of no use
    assertEquals(
        403, phone.post("/d/1/fire.enter", Map.of("Origin", "http://example.com"), "a=b").status());
    assertEquals(421, phone.send("GET", "/", Map.of("Host", "example.com"), "").status());
    // and it dies with the session
    smith.post("/phones/off", Map.of());
    Screen again = on();
    Visitor thief = new Visitor(again.authority());
    thief.headers.put("Cookie", phone.headers.get("Cookie"));
    assertEquals(403, thief.get("/d/1/fire").status());
  }

  @Test
  void twoPeopleEnterOneHeat() throws IOException {
    Visitor phone = joined(on());
    Map<String, String> mine = entry("m".repeat(20), "1", "2", Map.of("at", "2270", "for", "7"));
    Map<String, String> theirs = entry("t".repeat(20), "1", "2", Map.of("at", "2230", "for", "5"));
    assertEquals(303, smith.post("/d/1/fire.enter", theirs).status());
    assertEquals(303, smith.post("/d/1/fire.enter", theirs).status(), "sent once more");
    Visitor.Reply refused = phone.post("/d/1/fire.enter", mine);
    assertEquals(409, refused.status());
    assertTrue(
        refused.body().contains("2230 F") && refused.body().contains("2270 F"), refused.body());
    Path file = folder.resolve("mosaic.json");
    assertFalse(Files.readString(file).contains("2270"));
    mine.put("replace", "yes");
    assertEquals(303, phone.post("/d/1/fire.enter", mine).status());
    assertTrue(Files.readString(file).contains("2270 F"));
    assertFalse(Files.readString(file).contains("2230"));
    // what was entered for another billet, or another plan, goes nowhere
    mine.put("id", "o".repeat(20));
    mine.put("billet", "other.json");
    assertEquals(409, phone.post("/d/1/fire.enter", mine).status());
    Map<String, String> off = entry("p".repeat(20), "2", "1", Map.of());
    assertEquals(409, phone.post("/d/1/fire.enter", off).status(), "step 2 is no weld");
  }

  @ParameterizedTest
  @CsvSource({"at, hot", "for, -5", "hotter, much", "longer, -9", "at, 1e9", "for, ٣"})
  void whatMakesNoSenseIsToldAndNothingIsWritten(String field, String value) throws IOException {
    String before = Files.readString(folder.resolve("mosaic.json"));
    Visitor.Reply reply =
        smith.post("/d/1/fire.enter", entry("x".repeat(20), "1", "1", Map.of(field, value)));
    assertEquals(409, reply.status(), reply.body());
    assertTrue(reply.body().contains("id=\"notice\""), reply.body());
    assertEquals(before, Files.readString(folder.resolve("mosaic.json")));
    assertEquals(400, smith.post("/d/1/fire.enter", Map.of("what", "NOTHING")).status());
    assertEquals(400, smith.post("/d/1/fire.timer", Map.of("act", "explode")).status());
  }

  @Test
  void theClockIsTheSameOnAllScreens() throws IOException {
    Visitor phone = joined(on());
    Map<String, String> start =
        Map.of("act", "start", "step", "1", "heat", "1", "title", "<b>", "minutes", "5.0");
    assertEquals(303, phone.post("/d/1/fire.timer", start).status());
    String bench = smith.get("/d/1/fire").body();
    assertTrue(bench.contains("role=\"timer\"") && bench.contains("&lt;b"), bench);
    smith.post("/d/1/fire.timer", start);
    long left = Long.parseLong(phone.get("/d/1/fire.news?hold=0").header("X-Left"));
    assertTrue(left > 0 && left <= 300_000, "" + left);
    page.close();
    open();
    smith.post("/open", Map.of("file", "mosaic.json"));
    assertTrue(smith.get("/d/1/fire").body().contains("role=\"timer\""), "after another start");
    smith.post("/d/1/fire.timer", Map.of("act", "stop"));
    assertFalse(smith.get("/d/1/fire").body().contains("role=\"timer\""));
  }

  /** An answer that is held comes as soon as something is otherwise, and not before. */
  @Test
  void whatOthersDoIsHeardOfAtOnce() throws Exception {
    String mark = "";
    for (int i = 0; i < 300 && !mark.contains("BAND"); i++) { // until all is worked out
      mark = smith.get("/d/1/fire.news?hold=0").body();
      Thread.sleep(100);
    }
    assertTrue(mark.contains("BAND"), mark);
    String had = mark;
    Visitor phone = joined(on());
    CompletableFuture<Visitor.Reply> held =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return phone.get("/d/1/fire.news?mark=" + had + "&hold=1");
              } catch (IOException e) {
                throw new AssertionError(e);
              }
            });
    Thread.sleep(400);
    assertFalse(held.isDone(), had);
    smith.post(
        "/d/1/fire.timer",
        Map.of("act", "start", "step", "1", "heat", "1", "title", "t", "minutes", "5.0"));
    assertNotEquals(had, held.get(2, TimeUnit.SECONDS).body(), "long before its twenty seconds");
  }

  @Test
  void whatIsEnteredIsTakenBack() throws IOException {
    Path file = folder.resolve("mosaic.json");
    String before = Files.readString(file);
    smith.post("/d/1/fire.enter", entry("y".repeat(20), "1", "1", Map.of()));
    assertNotEquals(before, Files.readString(file));
    assertTrue(smith.get("/d/1/fire").body().contains("Take back: step 1 weld, heat 1"));
    assertEquals(409, smith.post("/d/1/fire.undo", Map.of("last", "step 2 draw")).status());
    assertEquals(303, smith.post("/d/1/fire.undo", Map.of("last", "step 1 weld, heat 1")).status());
    assertEquals(before, Files.readString(file));
  }

  @Test
  void whatAnotherHandWroteMeanwhileStays() throws IOException {
    Path file = folder.resolve("mosaic.json");
    Files.writeString(file, Files.readString(file).replace("\"2200 F\"", "\"2210 F\""));
    assertEquals(
        303, smith.post("/d/1/fire.enter", entry("z".repeat(20), "1", "1", Map.of())).status());
    assertTrue(Files.readString(file).contains("2210 F"));
    assertTrue(Files.readString(file).contains("\"done\""));
  }

  @Test
  void whatIsNotSavedOnTheBenchIsNotSavedByAPhone() throws IOException {
    Path file = folder.resolve("mosaic.json");
    String before = Files.readString(file);
    edit("/d/1", Map.of("stack.width", "1-1/4 in"));
    smith.post("/d/1/fire.enter", entry("q".repeat(20), "1", "1", Map.of()));
    assertEquals(before, Files.readString(file));
    edit("/d/1", Map.of("act", "save"));
    assertTrue(Files.readString(file).contains("\"done\""));
  }
}
