package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What stands beside a test etch, by forms alone. */
@Timeout(120)
class EtchTest extends FormsOnly {
  private String opened(String billet) throws IOException {
    Files.copy(Path.of("alloy-data/billets").resolve(billet), folder.resolve(billet));
    return smith.post("/open", Map.of("file", billet)).header("Location");
  }

  private static TreeSet<String> all(Visitor.Reply reply, String pattern) {
    TreeSet<String> all = new TreeSet<>();
    Matcher m = Pattern.compile(pattern).matcher(reply.body());
    while (m.find()) {
      all.add(m.group(1));
    }
    return all;
  }

  /** Every seam that has a place in the picture is in the list by the same name. */
  @Test
  void seamsInThePictureAreThoseOfTheList() throws IOException {
    Visitor.Reply mosaic = smith.get(opened("mosaic.json") + "/fire.etch");
    assertEquals(200, mosaic.status());
    TreeSet<String> listed = all(mosaic, "name=\"where\" value=\"([^\"]*)\"");
    TreeSet<String> dotted = all(mosaic, "data-where=\"([^\"]*)\"");
    assertTrue(listed.containsAll(dotted), dotted + " of " + listed);
    listed.removeIf(w -> w.startsWith("layers"));
    assertEquals(listed, dotted, "all but the layers, which have no place of their own");
    Visitor.Reply three = smith.get(opened("san-mai.json") + "/fire.etch");
    assertEquals(
        all(three, "name=\"where\" value=\"([^\"]*)\""), all(three, "data-where=\"([^\"]*)\""));
  }

  /** The picture is that of the step by which the work has come, etched as is asked. */
  @Test
  void thePictureIsThatOfTheStepThatIsDone() throws IOException {
    String desk = opened("mosaic.json");
    Visitor.Reply end = smith.get(desk + "/fire.png");
    assertTrue(end.header("Content-Type").equals("image/png"), end.head());
    assertEquals(end.body(), smith.get(desk + "/fire.png?rev=1&etched=as-cooled").body());
    assertNotEquals(end.body(), smith.get(desk + "/fire.png?etched=hardened").body());
    assertEquals(400, smith.get(desk + "/fire.png?etched=%3Cscript%3E").status());
    smith.post(
        desk + "/fire.enter",
        Map.of("id", "u".repeat(20), "billet", "mosaic.json", "what", "UP_TO", "step", "10"));
    Visitor.Reply page = smith.get(desk + "/fire.etch");
    assertTrue(
        page.body().contains("The end of the bar after step 10"),
        () -> page.body().replaceAll("(?s).*<main", ""));
    assertNotEquals(end.body(), smith.get(desk + "/fire.png").body());
    // what is seen there is entered at that step
    assertEquals(
        303,
        smith
            .post(
                desk + "/fire.enter",
                Map.of(
                    "id", "v".repeat(20),
                    "billet", "mosaic.json",
                    "what", "LOOK",
                    "where", "restack 8 one on another",
                    "line", "plain",
                    "width", "1/32"))
            .status());
    String text = Files.readString(folder.resolve("mosaic.json"));
    assertTrue(text.contains("\"width\": \"1/32 in\""), text);
  }

  /** In words where nothing can be drawn, or looked at; the list stays where there is one. */
  @Test
  void whereNothingIsDrawnItSaysWhy() throws IOException {
    String text = Files.readString(Path.of("alloy-data/billets/mosaic.json"));
    String twist =
        "{ \"do\": \"twist\", \"turns\": 6, \"over\": \"10 in\", \"way\": \"right\","
            + " \"heats\": [{ \"at\": \"2100 F\", \"for\": \"3 min\" }] }";
    int weld = text.indexOf("{ \"do\": \"grind\"");
    Files.writeString(
        folder.resolve("twisted.json"),
        text.substring(0, weld) + twist + "\n], \"units\": \"us\" }");
    String desk = smith.post("/open", Map.of("file", "twisted.json")).header("Location");
    Visitor.Reply page = smith.get(desk + "/fire.etch");
    assertEquals(200, page.status(), page.body());
    assertTrue(
        page.body().contains("a twisted bar has another pattern at every depth"), page.body());
    assertFalse(page.body().contains("<img"), page.body());
    assertTrue(page.body().contains("name=\"where\""), page.body());
    assertEquals(404, smith.get(desk + "/fire.png").status());
    String begun = begun("nothing", "us", "");
    Visitor.Reply mend = smith.get(begun + "/fire.etch");
    assertEquals(409, mend.status());
    assertTrue(mend.body().contains("<a href=\"" + begun + "\">To its bench</a>"), mend.body());
  }

  /** No address takes a photograph. */
  @Test
  void nothingTakesAPhotograph() throws IOException {
    String desk = opened("mosaic.json");
    for (String at : new String[] {"/fire.etch", "/fire.png"}) {
      assertEquals(404, smith.post(desk + at, Map.of("photo", "x".repeat(1000))).status(), at);
    }
    assertTrue(smith.get(desk + "/fire.etch").body().contains("sent nowhere and not kept"));
  }
}
