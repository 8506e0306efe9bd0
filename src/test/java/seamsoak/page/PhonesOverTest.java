package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.data.DataFolder;
import seamsoak.page.fire.Clock;
import seamsoak.page.form.Kit;
import seamsoak.report.Colophon;
import seamsoak.steel.SteelTable;
import seamsoak.support.Walks;

/** Twelve hours after phones were let in they are out, by a clock that a test sets. */
@Timeout(120)
class PhonesOverTest {
  /** Stands in for the shop's network. */
  private static final String SHOP = "127.77.0.3";

  private static final long HOURS = TimeUnit.HOURS.toNanos(12);

  @TempDir private Path folder;
  private final AtomicLong nanos = new AtomicLong(Long.MAX_VALUE - HOURS / 2); // it may wrap
  private Desks desks;
  private Work work;
  private Phones phones;

  @BeforeEach
  void lay() throws IOException {
    System.setProperty("seamsoak.shop", SHOP);
    DataFolder data = DataFolder.packed();
    Bell bell = new Bell();
    Kit kit = Kit.of(data, Walks.CORRELATIONS, SteelTable.load(data), Optional.empty(), 0);
    Files.copy(Path.of("alloy-data/billets/san-mai.json"), folder.resolve("b.json"));
    desks = new Desks(folder, kit, new Drafts(folder.resolve("drafts")), bell);
    desks.open("b.json");
    work = new Work(kit, bell);
    Colophon colophon = new Colophon("seamsoak", "The tables packed with it.", "page");
    phones =
        new Phones(
            folder,
            desks,
            FirePages.of(kit, work, data, folder.resolve("state"), bell),
            new DeskPages(
                kit,
                work,
                new Answers(kit, colophon),
                new MyShop(folder.resolve("state/shop.json"), kit)),
            new Presence(System::nanoTime),
            new Clock() {
              @Override
              public long millis() {
                return 0; // whatever the computer's clock is set to does not matter
              }

              @Override
              public long nanos() {
                return nanos.get();
              }
            });
  }

  @AfterEach
  void away() {
    System.clearProperty("seamsoak.shop");
    phones.close();
    work.close();
    desks.close();
  }

  /** Switches it on and comes in. */
  private Visitor in() throws IOException {
    Asked on = Asked.of("POST", "/phones/on", Map.of(), Map.of()).with(Map.of("address", SHOP));
    assertEquals(303, phones.posted(on).orElseThrow().status());
    String body = new String(phones.looked().body(), StandardCharsets.UTF_8);
    Matcher link =
        Pattern.compile("http://(127\\.77\\.0\\.3:[0-9]+)/join\\?k=([\\w-]{43})").matcher(body);
    Matcher code = Pattern.compile("class=\"code\">([0-9]{3}) ([0-9]{3})<").matcher(body);
    assertTrue(link.find() && code.find(), body);
    Visitor phone = new Visitor(link.group(1));
    Visitor.Reply let =
        phone.post("/join", Map.of("k", link.group(2), "code", code.group(1) + code.group(2)));
    assertEquals(303, let.status(), let.body());
    phone.headers.put("Cookie", let.header("Set-Cookie").replaceFirst(";.*", ""));
    return phone;
  }

  @Test
  void nobodyIsInAfterTwelveHours() throws IOException {
    Visitor phone = in();
    nanos.addAndGet(HOURS - 1);
    assertEquals(200, phone.get("/d/1/fire").status(), "not a moment sooner");
    nanos.addAndGet(1);
    String before = Files.readString(folder.resolve("b.json"));
    Visitor.Reply reply =
        phone.post(
            "/d/1/fire.enter",
            PhonesTest.entry("n".repeat(20), "1", "1", Map.of("billet", "b.json")));
    // the door closes with whoever asks last: told so, or not answered any more
    assertTrue(List.of(0, 403).contains(reply.status()), reply.body());
    assertEquals(before, Files.readString(folder.resolve("b.json")), "nothing is written");
    assertFalse(phones.areOn());
    assertThrows(IOException.class, () -> phone.get("/d/1/fire"), "nothing listens any more");
  }

  /** Whether or not a phone asks: the program looks after it. */
  @Test
  void nothingListensThoughNobodyAsks() throws IOException {
    Visitor phone = in();
    nanos.addAndGet(HOURS);
    phones.expire();
    assertFalse(phones.areOn());
    assertThrows(IOException.class, () -> phone.get("/d/1/fire"));
    // on again, the old cookie opens nothing, and another twelve hours begin
    Visitor again = in();
    Visitor old = new Visitor(again.authority);
    old.headers.put("Cookie", phone.headers.get("Cookie"));
    assertEquals(403, old.get("/d/1/fire").status());
    nanos.addAndGet(HOURS - 1);
    assertEquals(200, again.get("/d/1/fire").status());
  }

  /** The bench says until when. */
  @Test
  void theBenchSaysUntilWhen() throws IOException {
    in();
    nanos.addAndGet(TimeUnit.HOURS.toNanos(11));
    String body = new String(phones.looked().body(), StandardCharsets.UTF_8);
    String later = LocalTime.now().plusMinutes(60).toString().substring(0, 5);
    String sooner = LocalTime.now().plusMinutes(59).toString().substring(0, 5);
    assertTrue(body.contains(later) || body.contains(sooner), later + " in " + body);
  }
}
