package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The shelf: what lies there, what is brought in. */
@Timeout(120)
class ShelfTest extends FormsOnly {
  @Test
  void eachBilletHasItsDrawing() throws IOException {
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), folder.resolve("one & two.json"));
    Files.writeString(folder.resolve("other.json"), "{ \"a\": 1 }");
    String shelf = smith.get("/").body();
    assertTrue(shelf.contains("src=\"/sketch?file=one+%26+two.json\""), shelf);
    Visitor.Reply sketch = smith.get("/sketch?file=one+%26+two.json");
    assertEquals(200, sketch.status());
    assertEquals("image/svg+xml", sketch.header("Content-Type"));
    assertTrue(sketch.body().startsWith("<svg"), sketch.body());
    assertEquals(sketch.body(), smith.get("/sketch?file=one+%26+two.json").body());
    String desk = begun("three-layers", "us", "fresh");
    assertEquals(200, smith.get("/sketch?file=fresh.json").status(), desk);
    for (String none :
        List.of("other.json", "", "..%2Fx.json", "%2Fetc%2Fpasswd", "no.json", "%00")) {
      assertEquals(404, smith.get("/sketch?file=" + none).status(), none);
    }
  }

  @Test
  void aBilletIsBroughtInAsText() throws IOException {
    String text = Files.readString(Path.of("alloy-data/billets/san-mai.json"));
    Visitor.Reply reply = smith.post("/upload", Map.of("name", "theirs", "text", text));
    assertEquals(303, reply.status(), reply.body());
    String desk = reply.header("Location");
    assertTrue(smith.get(desk).body().contains("Cheese knife"));
    assertEquals(text, smith.get(desk + "/billet.json").body(), "byte for byte");
    assertFalse(
        Files.exists(folder.resolve("theirs.json")), "nothing is written until it is saved");
    assertEquals(
        303, smith.post("/upload", Map.of("name", "theirs", "text", text)).status(), "a free name");
    assertTrue(smith.get("/").body().contains("theirs 2"));
  }

  @Test
  void whatIsNoBilletIsToldSoAndNothingIsLaid() throws IOException {
    for (String text : List.of("", "[]", "7", "{", "\u201cstack\u201d: 1", "<html>", "{\"a\":1")) {
      Visitor.Reply reply = smith.post("/upload", Map.of("name", "x", "text", text));
      assertEquals(409, reply.status(), text);
      assertTrue(reply.body().contains("id=\"notice\""), reply.body());
    }
    String text = "{ \"stack\": 1, \"steps\": {}, \"units\": [] }";
    for (String name : List.of("../x", "con", ".x", "x".repeat(81), "a/b", "\u0000")) {
      assertEquals(409, smith.post("/upload", Map.of("name", name, "text", text)).status(), name);
    }
    assertFalse(smith.get("/").body().contains("class=\"card\"><div"), "the shelf is empty");
    Visitor.Reply odd = smith.post("/upload", Map.of("name", "odd", "text", text));
    assertEquals(200, smith.get(odd.header("Location")).status(), "it can be mended");
  }
}
