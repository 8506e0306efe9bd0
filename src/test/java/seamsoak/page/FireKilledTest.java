package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Child;
import seamsoak.support.Tab;
import seamsoak.support.Walks;

/**
 * The computer is killed in the midst of an evening: the clock is right after another start, what
 * was answered as entered is there, and what a phone has kept comes once. {@code -Dkills=50} sets
 * how often.
 */
@Tag("slow")
@Tag("long")
@Timeout(3600)
class FireKilledTest {
  private static final int KILLS = Integer.getInteger("kills", Boolean.getBoolean("long") ? 25 : 1);
  private static final Pattern LINK = Pattern.compile("http://127\\.[0-9.]+:[0-9]+/in\\?t=[\\w-]+");

  /** Stands in for the shop's network. */
  private static final String SHOP = "127.77.0.2";

  /** What an answer may take on a busy machine, ms. */
  private static final long LATE_MILLIS = 1500;

  @TempDir private Path folder;
  private Child child;
  private Visitor smith;

  private void start() throws Exception {
    child =
        Child.start(
            folder,
            List.of("-Dseamsoak.state=" + folder.resolve("state"), "-Dseamsoak.shop=" + SHOP),
            "seamsoak.cli.Main",
            List.of("page", "--no-browser"));
    smith = Visitor.in(link());
    assertEquals("/d/1", smith.post("/open", Map.of("file", "b.json")).header("Location"));
  }

  private String link() throws Exception {
    for (int i = 0; i < 1200; i++) {
      Matcher link = LINK.matcher(Files.readString(child.out()));
      if (link.find()) {
        return link.group();
      }
      assertTrue(child.process().isAlive(), child.said());
      Thread.sleep(50);
    }
    throw new AssertionError("no link: " + child.said());
  }

  private void kill() throws Exception {
    child.process().destroyForcibly();
    child.code();
  }

  private void lay() throws IOException {
    Files.writeString(
        folder.resolve("b.json"),
        """
        { "units": "us",
          "stack": { "layers": 3, "steels": ["1018", "1095"], "thickness": ["1/2", "1/2"],
            "width": "1-3/8", "length": 6 },
          "steps": [ { "do": "weld", "heats": [{ "at": 2200, "for": 5, "times": 3 }] } ] }
        """);
  }

  private static Map<String, String> look(String id) {
    Map<String, String> entry = new LinkedHashMap<>();
    entry.put("id", id.replace(" ", "-") + "x".repeat(16));
    entry.put("billet", "b.json");
    entry.put("what", "LOOK");
    entry.put("where", "layers");
    entry.put("line", "faint");
    entry.put("with", id);
    return entry;
  }

  private static List<String> looks(String text) {
    return Walks.billet(text).steps().get(0).mark().seen().stream()
        .map(s -> s.with().orElse(""))
        .toList();
  }

  /**
   * Whatever the moment, what was answered is there after another start, and once all is sent again
   * each stands once; in the file, or in a draft where the bench has changes that are not saved.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void whatWasAnsweredIsThereAndNothingTwice(boolean saved) throws Exception {
    lay();
    SplittableRandom random = new SplittableRandom(System.nanoTime());
    List<Map<String, String>> sent = new ArrayList<>();
    List<String> answered = new ArrayList<>();
    for (int kill = 0; kill < KILLS; kill++) {
      start();
      try {
        if (!saved && kill == 0) {
          Visitor.Reply bench = smith.get("/d/1");
          Map<String, String> change =
              Map.of("rev", FormsOnly.number(bench), "stack.length", "7 in");
          assertEquals(303, smith.post("/d/1/edit", change).status());
        }
        List<String> there = looks(smith.get("/d/1/billet.json").body());
        assertTrue(there.containsAll(answered), there + " of " + answered);
        for (Map<String, String> entry : sent) { // a phone that heard of none sends all again
          assertEquals(303, smith.post("/d/1/fire.enter", entry).status());
          answered.add(entry.get("with"));
        }
        int until = 1 + random.nextInt(4);
        for (int i = 0; i < until; i++) {
          Map<String, String> entry = look(kill + " " + i);
          sent.add(entry);
          assertEquals(303, smith.post("/d/1/fire.enter", entry).status());
          answered.add(entry.get("with"));
        }
        Map<String, String> last = look(kill + " last");
        sent.add(last);
        sendAndHearNothing(last);
        Thread.sleep(random.nextInt(40));
      } finally {
        kill();
      }
    }
    start();
    try {
      List<String> there = looks(smith.get("/d/1/billet.json").body());
      assertTrue(there.containsAll(answered), there + " of " + answered);
      for (Map<String, String> entry : sent) {
        assertEquals(303, smith.post("/d/1/fire.enter", entry).status());
      }
      if (!saved) {
        String number = FormsOnly.number(smith.get("/d/1"));
        smith.post("/d/1/edit", Map.of("rev", number, "act", "save"));
      }
      List<String> all = looks(Files.readString(folder.resolve("b.json")));
      assertEquals(sent.stream().map(e -> e.get("with")).toList(), all);
    } finally {
      kill();
    }
  }

  private void sendAndHearNothing(Map<String, String> entry) throws IOException {
    String body =
        entry.entrySet().stream()
            .map(e -> e.getKey() + "=" + e.getValue().replace(" ", "+"))
            .collect(Collectors.joining("&"));
    try (Socket socket = smith.connect()) {
      socket
          .getOutputStream()
          .write(
              ("POST /d/1/fire.enter HTTP/1.1\r\nHost: "
                      + smith.authority
                      + "\r\nOrigin: http://"
                      + smith.authority
                      + "\r\nCookie: "
                      + smith.headers.get("Cookie")
                      + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                      + body.length()
                      + "\r\n\r\n"
                      + body)
                  .getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().flush();
    }
  }

  /** What was left of a hold goes on while nothing runs. */
  @Test
  void theClockIsRightAfterAKill() throws Exception {
    lay();
    start();
    long begun;
    try {
      begun = System.currentTimeMillis();
      smith.post(
          "/d/1/fire.timer",
          Map.of("act", "start", "step", "1", "heat", "1", "title", "t", "minutes", "5.0"));
      smith.post("/d/1/fire.timer", Map.of("act", "more"));
    } finally {
      kill();
    }
    Thread.sleep(1000);
    start();
    try {
      long left = Long.parseLong(smith.get("/d/1/fire.news?hold=0").header("X-Left"));
      long right = 360_000 - (System.currentTimeMillis() - begun);
      assertTrue(Math.abs(left - right) <= LATE_MILLIS, left + " ms left, not " + right);
      assertEquals(
          303,
          smith
              .post(
                  "/d/1/fire.enter",
                  PhonesTest.entry("n".repeat(20), "1", "1", Map.of("billet", "b.json")))
              .status());
      assertEquals("", smith.get("/d/1/fire.news?hold=0").header("X-Left"), "taken out");
    } finally {
      kill();
    }
  }

  /** A phone keeps what is tapped while nothing answers; let in again, it sends it once. */
  @Test
  void aPhoneSendsWhatItKeptOnce(@TempDir Path browser) throws Exception {
    assumeTrue(Tab.installed().isPresent(), "no Chromium here");
    lay();
    start();
    Tab phone = Tab.open(Tab.installed().orElseThrow(), browser, 390, 844);
    try {
      String at = join(phone);
      phone.tap("a[href$='/fire']");
      phone.until(AtTheFire.WHOLE);
      phone.tap("button[value=planned]");
      phone.until("document.getElementById('task-title').textContent.endsWith('heat 2 of 3')");
      phone.until(AtTheFire.WHOLE); // nothing moves under the next tap
      kill();
      phone.tap("button[value=planned]");
      phone.until("document.getElementById('kept').textContent.includes('One entry is kept')");
      start();
      assertEquals(at, join(phone), "at the same address, or what was kept would be lost");
      phone.tap("a[href$='/fire']");
      phone.until("document.getElementById('task-title')?.textContent.endsWith('heat 3 of 3')");
      phone.until("localStorage.getItem('seamsoak-kept') === '[]'");
      String text = Files.readString(folder.resolve("b.json"));
      assertEquals(2, Walks.billet(text).steps().get(0).heats().get(0).done().size());
    } finally {
      phone.close();
      kill();
    }
  }

  /** Lets a phone in; gives where. */
  private String join(Tab phone) throws Exception {
    assertEquals(303, smith.post("/phones/on", Map.of("address", SHOP)).status());
    String body = smith.get("/phones").body();
    Matcher link =
        Pattern.compile("http://(127\\.77\\.0\\.2:[0-9]+)/join\\?k=[\\w-]{43}").matcher(body);
    Matcher code = Pattern.compile("class=\"code\">([0-9]{3}) ([0-9]{3})<").matcher(body);
    assertTrue(link.find() && code.find(), body);
    phone.go(link.group());
    phone.until("document.getElementById('code') !== null");
    phone.tap("#code");
    phone.type(code.group(1) + code.group(2));
    phone.press("Enter");
    phone.until("document.querySelector(\"a[href$='/fire']\") !== null");
    return link.group(1);
  }
}
