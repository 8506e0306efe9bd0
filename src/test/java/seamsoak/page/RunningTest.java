package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A second start finds the first, and a page that nobody is at any more ends. */
@Timeout(60)
class RunningTest {
  @TempDir private Path folder;

  private Running running() {
    return Running.of(folder.resolve("state"), folder);
  }

  @Test
  void aSecondStartIsGivenAFreshLink() throws Exception {
    try (Page page = Pageful.open(folder)) {
      assertEquals(
          "rw-------",
          PosixFilePermissions.toString(Files.getPosixFilePermissions(running().file())));
      URI link = URI.create(running().link("second.json").orElseThrow());
      assertEquals(page.address(), "http://" + link.getAuthority() + "/");
      Visitor smith = new Visitor(link.getAuthority());
      Visitor.Reply in = smith.get(link.getPath() + "?" + link.getQuery());
      assertEquals(303, in.status());
      smith.headers.put("Cookie", in.header("Set-Cookie").replaceFirst(";.*", ""));
      assertEquals("/d/1", smith.get("/").header("Location"), "what it was started with");
      assertTrue(smith.get("/d/1").body().contains("second"));
    }
    assertEquals(Optional.empty(), running().link(""));
    assertFalse(Files.exists(running().file()));
  }

  @Test
  void whoeverDoesNotKnowTheSecretIsRefused() throws Exception {
    try (Page page = Pageful.open(folder)) {
      Visitor stranger = new Visitor(page.address().replaceAll("http://|/$", ""));
      assertEquals(403, stranger.get("/again").status());
      assertEquals(403, stranger.send("GET", "/again", Map.of(Running.HEADER, "x"), "").status());
    }
  }

  @Test
  void whatIsLeftOfARunThatWasKilledIsNotBelieved() throws Exception {
    running().is("http://127.1.2.3:1/", "x");
    assertEquals(Optional.empty(), running().link(""));
    running().is("http://example.com/", "x");
    assertEquals(Optional.empty(), running().link(""), "no other machine is asked");
    Files.writeString(running().file(), "nonsense");
    assertEquals(Optional.empty(), running().link(""));
  }

  @Test
  void aPageThatNobodyIsAtIsGone() {
    AtomicLong now = new AtomicLong(5);
    Presence presence = new Presence(now::get);
    now.addAndGet(TimeUnit.MINUTES.toNanos(11));
    assertFalse(presence.isGone(), "a browser without the script says nothing of itself");
    presence.came(true);
    now.addAndGet(TimeUnit.MINUTES.toNanos(9));
    assertFalse(presence.isGone());
    now.addAndGet(TimeUnit.MINUTES.toNanos(2));
    assertTrue(presence.isGone());
  }
}
