package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import seamsoak.support.Ran;

/** Billets ticked on the shelf: one kiln for them. */
@Timeout(120)
class OneKilnTest extends FormsOnly {
  private void bar(String name, String steel) throws IOException {
    Files.writeString(
        folder.resolve(name + ".json"),
        """
        { "name": "%s", "units": "us",
          "stack": { "layers": 1, "steels": ["%s"], "thickness": [0.25], "width": 1.5, "length": 6 },
          "steps": [ { "do": "draw", "thickness": 0.2, "width": 1.55, "heats": [{ "at": 1950, "for": 3 }] } ] }
        """
            .formatted(name, steel));
  }

  private static String words(String html) {
    return html.replaceAll("(?s)<style>.*?</style>|<[^>]*>", " ")
        .replace("&#39;", "'")
        .replaceAll("\\s+", " ");
  }

  /** The same that the command says, each sentence of it. */
  @Test
  void itSaysWhatTheCommandSays() throws IOException {
    bar("one", "1084");
    bar("two", "5160");
    String shelf = smith.get("/").body();
    assertTrue(shelf.contains("name=\"b0\" value=\"one.json\""), shelf);
    assertTrue(shelf.contains("name=\"b1\" value=\"two.json\""), shelf);
    Visitor.Reply reply = smith.get("/kiln?b0=one.json&b1=two.json");
    assertEquals(200, reply.status());
    String page = words(reply.body());
    String said =
        Ran.run(
                "kiln",
                folder.resolve("one.json").toString(),
                folder.resolve("two.json").toString(),
                "--samples",
                "0")
            .out()
            .replace(folder + "/", "");
    int told = 0;
    for (String sentence : said.replaceAll("\\s+", " ").split("(?<=[.]) ")) {
      if (!sentence.matches(".* - .*|.*The loads.*") && sentence.endsWith(".")) {
        told++;
        assertTrue(page.contains(sentence.replaceFirst("^ ?- ", "").strip()), sentence);
      }
    }
    assertTrue(told > 20, told + " sentences");
  }

  @Test
  void whatIsOnTheBenchCountsAsItIsThere() throws IOException {
    bar("one", "1084");
    String desk = begun("three-layers", "us", "fresh");
    assertEquals(200, smith.get("/kiln?b0=one.json&b1=fresh.json").status(), desk);
  }

  @Test
  void whatCannotBeAskedIsToldSo() throws IOException {
    bar("one", "1084");
    assertFalse(smith.get("/").body().contains("/kiln"), "one billet is no question");
    Files.writeString(folder.resolve("slip.json"), "{");
    Files.copy(Path.of("alloy-data/billets/san-mai.json"), folder.resolve("three.json"));
    for (String ask :
        List.of(
            "",
            "?b0=one.json",
            "?b0=one.json&b1=slip.json",
            "?b0=one.json&b1=..%2Fone.json",
            "?b0=one.json&b1=%2Fetc%2Fpasswd",
            "?b0=one.json&b1=%00",
            "?b0=one.json&b1=%3Cscript%3E",
            "?b=one.json&b1=three.json",
            "?b0=one.json&b1=one.json&b2=one.json&b3=one.json&b4=one.json&b5=one.json&b6=one.json"
                + "&b7=one.json&b8=one.json")) {
      Visitor.Reply reply = smith.get("/kiln" + ask);
      assertEquals(409, reply.status(), ask);
      assertTrue(reply.body().contains("class=\"fault\" role=\"alert\""), ask);
      assertFalse(reply.body().contains("<script>"), ask);
    }
    assertEquals(400, smith.get("/kiln?b0=one.json&b0=three.json").status(), "no form sends that");
  }
}
