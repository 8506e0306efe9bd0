package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import seamsoak.billet.Billet;
import seamsoak.support.Walks;

/**
 * Two phones enter much at once over a network that drops lines: what was sent and not heard of is
 * sent again, and nothing is lost or stands twice. {@code -Dentries=1000} sets how much.
 */
@Tag("slow")
@Tag("long")
@Timeout(1800)
class TwoPhonesTest extends FormsOnly {
  /** So many looks a step may have, but for a few. */
  private static final int LOOKS = 48;

  private static final int ENTRIES =
      Integer.getInteger("entries", Boolean.getBoolean("long") ? 1000 : LOOKS + 2);

  /** To each belong its looks, and that both say it is done. */
  private static final int STEPS = (ENTRIES + LOOKS + 1) / (LOOKS + 2);

  private static final long SEED = 20261130;

  private static String billet() {
    return """
        { "units": "us",
          "stack": { "layers": 3, "steels": ["1018", "1095"], "thickness": ["1/2", "1/2"],
            "width": "1-3/8", "length": 6 },
          "steps": [
            { "do": "weld", "heats": [{ "at": 2200, "for": 5 }] }"""
        + ",\n    { \"do\": \"grind\", \"depth\": 0.001 }".repeat(STEPS)
        + "\n  ]\n}\n";
  }

  @AfterEach
  void away() {
    System.clearProperty("seamsoak.shop");
  }

  @Test
  void nothingIsLostAndNothingStandsTwice() throws Exception {
    Path file = folder.resolve("b.json");
    Files.writeString(file, billet());
    smith.post("/open", Map.of("file", "b.json"));
    System.setProperty("seamsoak.shop", PhonesTest.SHOP);
    assertEquals(303, smith.post("/phones/on", Map.of("address", PhonesTest.SHOP)).status());
    Map<String, Visitor> let = new LinkedHashMap<>();
    for (String who : List.of("left", "right")) {
      let.put(who, PhonesTest.joined(PhonesTest.screen(smith)));
      smith.post("/phones/another", Map.of());
    }
    for (int step = 1; step <= STEPS; step++) {
      int number = step + 1;
      List<CompletableFuture<Void>> phones =
          let.entrySet().stream()
              .map(p -> CompletableFuture.runAsync(() -> enters(p.getKey(), p.getValue(), number)))
              .toList();
      for (CompletableFuture<Void> phone : phones) {
        phone.get();
      }
    }
    Billet billet = Walks.billet(Files.readString(file));
    for (int step = 1; step <= STEPS; step++) {
      List<String> seen =
          billet.steps().get(step).mark().seen().stream().map(s -> s.with().orElse("")).toList();
      assertEquals(LOOKS, seen.size(), "step " + step + ", seed " + SEED);
      assertEquals(LOOKS, Set.copyOf(seen).size(), "step " + step + ", seed " + SEED);
      assertTrue(billet.steps().get(step).mark().done().isPresent());
    }
  }

  /** Both say that the step is done, and then each what it saw. */
  private void enters(String who, Visitor phone, int step) {
    Random random = new Random(SEED + who.hashCode() + step);
    for (int i = -1; i < LOOKS / 2; i++) {
      Map<String, String> entry = new LinkedHashMap<>();
      entry.put("id", who + "-" + step + "-" + i + "-" + "x".repeat(16));
      entry.put("billet", "b.json");
      if (i < 0) {
        entry.put("what", "UP_TO");
        entry.put("step", "" + step);
      } else {
        entry.put("what", "LOOK");
        entry.put("where", "layers");
        entry.put("line", "faint");
        entry.put("with", who + " " + i);
      }
      try {
        while (random.nextInt(3) == 0) {
          sentAndNotHeardOf(phone, entry, random);
        }
        Visitor.Reply reply = phone.post("/d/1/fire.enter", entry);
        assertEquals(303, reply.status(), () -> notice(reply));
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  private static String notice(Visitor.Reply reply) {
    return reply.body().replaceAll("(?s).*id=\"notice\"[^>]*>|</p>.*", "");
  }

  /** The line drops somewhere between the first letter and the answer. */
  private void sentAndNotHeardOf(Visitor phone, Map<String, String> look, Random random)
      throws IOException {
    String body =
        look.entrySet().stream()
            .map(e -> e.getKey() + "=" + e.getValue().replace(" ", "+"))
            .collect(Collectors.joining("&"));
    String all =
        "POST /d/1/fire.enter HTTP/1.1\r\nHost: "
            + phone.authority
            + "\r\nOrigin: http://"
            + phone.authority
            + "\r\nCookie: "
            + phone.headers.get("Cookie")
            + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: "
            + body.length()
            + "\r\n\r\n"
            + body;
    int sent = random.nextBoolean() ? all.length() : random.nextInt(all.length());
    try (Socket socket = phone.connect()) {
      socket.getOutputStream().write(all.substring(0, sent).getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().flush();
    }
    assertTrue(sent >= 0);
  }
}
