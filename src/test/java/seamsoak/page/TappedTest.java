package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A tap on the drawing of the section says where a line was seen; without the script too. */
@Timeout(120)
class TappedTest extends FormsOnly {
  /** The drawing as it is on the page, dots, and its margin; the bar is as wide as all of it. */
  private static final double WIDTH = 264;

  private static final double MARGIN = 3 * WIDTH / 219;

  @BeforeEach
  void lay() throws Exception {
    Files.writeString(
        folder.resolve("b.json"),
        """
        { "units": "metric",
          "stack": { "layers": 5, "steels": ["1084", "75Ni8"], "thickness": [8, 8], "width": 40,
            "length": 200 },
          "steps": [
            { "do": "weld", "heats": [{ "at": 1200, "for": 5 }] },
            { "do": "draw", "thickness": 24, "width": 24, "heats": [{ "at": 1150, "for": 3 }] },
            { "do": "restack", "across": 3, "high": 3 },
            { "do": "weld", "heats": [{ "at": 1200, "for": 5, "done": [{}] }] } ] }
        """);
    smith.post("/open", Map.of("file", "b.json"));
    for (int i = 0; i < 300 && !smith.get("/d/1/fire").body().contains("id=\"etch\""); i++) {
      Thread.sleep(100);
    }
  }

  private Visitor.Reply tapped(double across, double down) throws IOException {
    double bar = WIDTH - 2 * MARGIN;
    return smith.get(
        "/d/1/fire?tap.x="
            + Math.round(MARGIN + across * bar)
            + "&tap.y="
            + Math.round(MARGIN + down * bar));
  }

  private static String chosen(Visitor.Reply page) {
    Matcher m = Pattern.compile("name=\"where\" value=\"([^\"]*)\" checked").matcher(page.body());
    return m.find() ? m.group(1) : "none";
  }

  /** Joints lie at the thirds of the bar; in the middle of a piece are its layers. */
  @ParameterizedTest
  @CsvSource({
    "0.333, 0.15, restack 3 side by side",
    "0.667, 0.85, restack 3 side by side",
    "0.36, 0.5, restack 3 side by side",
    "0.15, 0.333, restack 3 one on another",
    "0.5, 0.667, restack 3 one on another",
    "0.5, 0.5, layers 1084 | 75Ni8",
    "0.17, 0.17, layers 1084 | 75Ni8"
  })
  void theSeamThatLiesThereIsChosen(double across, double down, String where) throws IOException {
    Visitor.Reply page = tapped(across, down);
    assertEquals(200, page.status());
    assertEquals(where, chosen(page));
    assertTrue(page.body().contains("<p id=\"tapped\">Tapped: "), page.body());
    assertTrue(page.body().contains("id=\"etch\" open"), "it stays unfolded");
  }

  @Test
  void besideTheMetalNothingIsChosen() throws IOException {
    Visitor.Reply page = tapped(0.5, 1.4);
    assertEquals("none", chosen(page));
    assertTrue(page.body().contains("tap nearer to one"), page.body());
  }

  /** What no browser sends is no tap. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "?tap.x=1",
        "?tap.x=&tap.y=",
        "?tap.x=-5&tap.y=3",
        "?tap.x=NaN&tap.y=1",
        "?tap.x=1e9&tap.y=1",
        "?tap.x=123456&tap.y=1",
        "?tap.x=1,5&tap.y=1",
        "?tap.x=%3Cscript%3E&tap.y=1"
      })
  void otherPlacesAreNoTap(String sent) throws IOException {
    Visitor.Reply page = smith.get("/d/1/fire" + sent);
    assertEquals(200, page.status());
    assertFalse(page.body().contains("id=\"tapped\""), page.body());
    assertEquals("none", chosen(page));
  }
}
