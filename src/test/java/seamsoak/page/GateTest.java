package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is let in, and what becomes of those who are not. */
@Timeout(120)
class GateTest extends FormsOnly {
  @Test
  void theSmithIsLetInAndEveryAnswerIsSealed() throws IOException {
    Visitor.Reply shelf = smith.get("/");
    assertEquals(200, shelf.status());
    for (Visitor.Reply reply :
        List.of(shelf, smith.get("/none"), new Visitor(smith.authority).get("/"))) {
      String policy = reply.header("Content-Security-Policy");
      assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
      assertTrue(policy.endsWith("frame-ancestors 'none'"), policy);
      assertFalse(policy.contains("unsafe"), policy);
      assertEquals("nosniff", reply.header("X-Content-Type-Options"));
      assertEquals("same-origin", reply.header("Cross-Origin-Opener-Policy"));
      assertEquals("same-origin", reply.header("Cross-Origin-Resource-Policy"));
      assertEquals("same-origin", reply.header("Referrer-Policy"));
      assertEquals("no-store", reply.header("Cache-Control"));
      assertEquals("", reply.header("Access-Control-Allow-Origin"));
    }
  }

  @Test
  void eachStartHasALoopbackAddressOfItsOwn() throws IOException {
    assertTrue(page.address().matches("http://127\\.[0-9.]+:[0-9]+/"), page.address());
    try (Page other = Pageful.open(folder)) {
      assertNotEquals(page.address(), other.address());
      Visitor with = new Visitor(other.address().replaceAll("http://|/$", ""));
      with.headers.put("Cookie", smith.headers.get("Cookie"));
      assertEquals(403, with.get("/").status(), "a cookie of another run");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"localhost", "example.com", "127.0.0.1", "[::1]", "HOST.", "HOST:80", "", " "})
  void anyOtherHostIsRefused(String host) throws IOException {
    String sent = host.replace("HOST", smith.authority);
    Visitor.Reply reply = smith.send("GET", "/", Map.of("Host", sent), "");
    assertTrue(reply.status() == 421 || reply.status() == 400, reply.head());
  }

  @Test
  void twoHostsAreRefused() throws IOException {
    String two =
        "GET / HTTP/1.1\r\nHost: %1$s\r\nHost: %1$s\r\nCookie: %2$s\r\nConnection: close\r\n\r\n";
    assertEquals(
        421, smith.raw(two.formatted(smith.authority, smith.headers.get("Cookie"))).status());
  }

  @ParameterizedTest
  @CsvSource({
    "http://example.com",
    "null",
    "''",
    "https://HOST",
    "http://HOST/",
    "http://HOST.example.com",
    "http://127.0.0.1",
    "'http://HOST http://HOST'"
  })
  void aFormOfAnotherPageIsRefused(String origin) throws IOException {
    String sent = origin.replace("HOST", smith.authority);
    assertEquals(403, smith.post("/", Map.of("Origin", sent), "a=b").status());
    assertEquals(
        403,
        smith
            .post("/", Map.of("Origin", "http://" + smith.authority.replaceFirst(":.*", ":1")), "")
            .status(),
        "another port");
  }

  @ParameterizedTest
  @CsvSource({
    "cross-site, 403, 403",
    "same-site, 403, 403",
    "none, 403, 200",
    "same-origin, 404, 200"
  })
  void whereABrowserSaysItComesFromCounts(String site, int posted, int looked) throws IOException {
    assertEquals(posted, smith.post("/none", Map.of("Sec-Fetch-Site", site), "").status());
    assertEquals(looked, smith.send("GET", "/", Map.of("Sec-Fetch-Site", site), "").status());
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "PATCH", "TRACE", "get", "CONNECT"})
  void otherMethodsAreRefused(String method) throws IOException {
    int status = smith.send(method, "/", Map.of(), "").status();
    assertTrue(status == 405 || status == 400, method + " " + status);
  }

  @Test
  void aHeadIsAnsweredWithoutABody() throws IOException {
    Visitor.Reply reply = smith.send("HEAD", "/", Map.of(), "");
    assertEquals(200, reply.status());
    assertEquals("", reply.body());
  }

  @Test
  void withoutTheCookieNothingIsSeen() throws IOException {
    Visitor stranger = new Visitor(smith.authority);
    assertEquals(403, stranger.get("/").status());
    assertEquals(403, stranger.post("/", Map.of()).status());
    String good = smith.headers.get("Cookie");
    for (String bad :
        List.of(good + "x", good.replaceFirst("=.*", "="), good + "; " + good, "x" + good, "a=b")) {
      stranger.headers.put("Cookie", bad);
      assertEquals(403, stranger.get("/").status(), bad);
    }
    stranger.headers.put("Cookie", "a=b; " + good);
    assertEquals(200, stranger.get("/").status());
  }

  @Test
  void theCookieIsForNobodyElse() throws IOException {
    URI link = URI.create(page.link());
    String cookie = smith.get(link.getPath() + "?" + link.getQuery()).header("Set-Cookie");
    String port = smith.authority.replaceFirst(".*:", "");
    assertTrue(
        cookie.matches("seamsoak_" + port + "=[\\w-]{43}; Path=/; HttpOnly; SameSite=Strict"),
        cookie);
  }

  @Test
  void aLinkOpensOnceAndSaysSo() throws IOException {
    URI link = URI.create(page.link());
    String target = link.getPath() + "?" + link.getQuery();
    Visitor stranger = new Visitor(smith.authority);
    assertEquals(303, stranger.send("HEAD", target, Map.of(), "").status());
    Visitor.Reply first = stranger.get(target);
    assertEquals(303, first.status());
    assertEquals("/", first.header("Location"));
    Visitor.Reply second = stranger.get(target);
    assertEquals(410, second.status());
    assertTrue(second.body().contains("used already"), second.body());
    assertEquals("", second.header("Set-Cookie"));
    assertEquals(403, stranger.get("/in?t=" + "A".repeat(43)).status());
    assertEquals(403, stranger.get("/in").status());
    assertEquals(400, stranger.get("/in?t=a&t=b").status());
  }

  @Test
  void aLinkIsOldAfterAMinute() throws IOException {
    AtomicLong now = new AtomicLong(Long.MAX_VALUE - 10); // and clocks may wrap
    Gate gate = new Gate("127.1.2.3:4", now::get);
    String fresh = gate.link();
    String old = gate.link();
    assertEquals(303, gate.in(asked(fresh)).status());
    now.addAndGet(61_000_000_000L);
    assertEquals(410, gate.in(asked(old)).status());
  }

  private static Asked asked(String link) {
    return Asked.of("GET", "/in", Asked.fields(URI.create(link).getQuery()), Map.of());
  }

  @Test
  void whatIsNoFormOrTooMuchIsRefused() throws IOException {
    assertEquals(415, smith.post("/", Map.of("Content-Type", "application/json"), "{}").status());
    assertEquals(415, smith.post("/", Map.of("Content-Type", "text/plain"), "a").status());
    assertEquals(411, smith.post("/", Map.of("Content-Length", ""), "").status());
    assertEquals(413, smith.post("/", Map.of("Content-Length", "300000"), "").status());
    assertEquals(400, smith.post("/none", Map.of(), "a=%zz").status());
    assertEquals(400, smith.post("/none", Map.of(), "a=1&a=2").status());
    assertEquals(404, smith.post("/none", Map.of(), "a=" + "b".repeat(250_000)).status());
    String chunked =
        "POST / HTTP/1.1\r\nHost: %1$s\r\nOrigin: http://%1$s\r\nCookie: %2$s\r\n"
            + "Connection: close\r\nTransfer-Encoding: chunked\r\n\r\n1\r\na\r\n0\r\n\r\n";
    assertEquals(
        411, smith.raw(chunked.formatted(smith.authority, smith.headers.get("Cookie"))).status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../../etc/passwd",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/d/..%2f..%2fx",
        "//example.com/",
        "/d/%00",
        "/\\x",
        "http://example.com/",
        "*",
        "/a b",
        "/?a=%",
        "/?%zz",
        "/\u00e9"
      })
  void noPathLeadsAnywhereElse(String target) throws IOException {
    Visitor.Reply reply = smith.get(target);
    assertTrue(List.of(400, 404).contains(reply.status()), target + " " + reply.head());
    assertFalse(reply.body().contains("root:") || reply.body().contains("\tat "), reply.body());
    assertEquals("", reply.header("Location"));
    assertEquals(200, smith.get("/").status(), "it goes on");
  }

  @Test
  void hugeAndBrokenHeadsEndNothing() throws IOException {
    smith.get("/?" + "a".repeat(3000));
    smith.send("GET", "/", Map.of("X", "y".repeat(100_000)), "");
    StringBuilder many = new StringBuilder("GET / HTTP/1.1\r\n");
    for (int i = 0; i < 5000; i++) {
      many.append("X").append(i).append(": y\r\n");
    }
    smith.raw(many + "\r\n");
    smith.raw("\0\1\2\r\n\r\n");
    smith.raw("GET\r\n\r\n");
    smith.raw("\r\n\r\n\r\n");
    assertEquals(200, smith.get("/").status());
  }

  /** Senders that never come to an end are many, and the smith is answered all the same. */
  @Test
  @Tag("slow")
  void slowSendersHoldUpNobodyForLong() throws IOException, InterruptedException {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 100; i++) {
        Socket socket = smith.connect();
        socket.getOutputStream().write("GET / HTTP/1.1\r\nHost: ".getBytes(StandardCharsets.UTF_8));
        slow.add(socket);
      }
      assertEquals(200, smith.get("/").status());
      for (int i = 0; i < 150; i++) {
        Socket socket = smith.connect();
        socket.getOutputStream().write("POST / HTTP/1.1\r\nHo".getBytes(StandardCharsets.UTF_8));
        slow.add(socket);
      }
      Thread.sleep(12_000); // more of them than threads: until their time is up
      assertEquals(200, smith.get("/").status());
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
  }
}
