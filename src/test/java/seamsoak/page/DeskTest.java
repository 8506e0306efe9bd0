package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Billets built and changed by forms. */
@Timeout(120)
class DeskTest extends FormsOnly {
  @ParameterizedTest
  @CsvSource({
    "three-layers, us", "many-layers, us", "mosaic, us",
    "three-layers, metric", "many-layers, metric", "mosaic, metric"
  })
  void everyPatternIsSoundAtOnceInBothUnits(String pattern, String units) throws IOException {
    Visitor.Reply bench = smith.get(begun(pattern, units, ""));
    assertEquals(200, bench.status());
    assertFalse(bench.body().contains("to mend"), bench.body());
    assertTrue(bench.body().contains("data-stage=\"NONE\""), "an answer is on its way");
    int steps = bench.body().split("class=\"card step\"", -1).length - 1;
    assertEquals(steps + 1, bench.body().split("<figure class=\"sketch\">", -1).length - 1);
  }

  @Test
  void fromNothingEveryFieldThatIsNeededSaysSo() throws IOException {
    String desk = begun("nothing", "metric", "mine");
    Visitor.Reply bench = smith.get(desk);
    assertTrue(bench.body().contains("There is no step yet"), bench.body());
    assertTrue(bench.body().contains("This is needed, such as 35 mm."), bench.body());
    assertFalse(bench.body().contains("&quot;:"), "no JSON is seen: " + bench.body());
    Map<String, String> all = new LinkedHashMap<>();
    all.put("stack.layers", "3");
    all.put("stack.steels[0]", "1018");
    all.put("stack.steels[1]", "1095");
    all.put("stack.thickness[0]", "6");
    all.put("stack.thickness[1]", "1/4 in");
    all.put("stack.width", "35");
    all.put("stack.length", "150");
    all.put("act", "step 0");
    all.put("new.0", "weld");
    edit(desk, all);
    bench = edit(desk, Map.of("steps[0].heats[0].at", "1200", "steps[0].heats[0].for", "5"));
    assertFalse(bench.body().contains("to mend"), bench.body());
    assertEquals("1/4 in", value(bench, "stack.thickness[1]"));
  }

  @Test
  void allFaultsAreToldAtOnceEachAtItsField() throws IOException {
    String desk = begun("mosaic", "us", "");
    Visitor.Reply bench =
        edit(
            desk,
            Map.of(
                "stack.steels[0]", "1048x",
                "steps[0].heats[0].at", "hot",
                "steps[6].angle", "5",
                "steps[6].jacket.thickness", "",
                "steps[10].thickness", "12 parsecs"));
    assertTrue(bench.body().contains("5 things to mend"), bench.body());
    for (String id :
        List.of(
            "at-stack.steels.0",
            "at-steps.0.heats.0.at",
            "at-steps.6.angle",
            "at-steps.6.jacket.thickness",
            "at-steps.10.thickness")) {
      assertTrue(bench.body().contains("href=\"#" + id + "\""), id);
      assertTrue(bench.body().contains("id=\"" + id + "-fault\""), id);
    }
    assertEquals("hot", value(bench, "steps[0].heats[0].at"), "what was typed stays");
    assertTrue(bench.body().contains("The answer comes once 5 things are mended"), bench.body());
  }

  @Test
  void aStepThatCannotBeDoneIsToldAtItAndWhatComesBeforeIsDrawn() throws IOException {
    String desk = begun("three-layers", "us", "");
    Visitor.Reply bench = edit(desk, Map.of("steps[2].thickness", "2"));
    assertTrue(bench.body().contains("href=\"#in-at-steps.2\""), bench.body());
    assertTrue(bench.body().contains("cannot be done"), bench.body());
    assertEquals(3, bench.body().split("<figure class=\"sketch\">", -1).length - 1);
  }

  @Test
  void changesAreUndoneAndRedone() throws IOException {
    String desk = begun("three-layers", "us", "");
    edit(desk, Map.of("steps[0].heats[0].at", "2150"));
    edit(desk, Map.of("act", "copy steps[0]"));
    Visitor.Reply once = edit(desk, Map.of("act", "undo"));
    assertEquals("2150", value(once, "steps[0].heats[0].at"));
    assertEquals("no such field", value(once, "steps[4].depth"));
    Visitor.Reply twice = edit(desk, Map.of("act", "undo"));
    assertEquals("2200", value(twice, "steps[0].heats[0].at"));
    Visitor.Reply again = edit(desk, Map.of("act", "redo"));
    assertEquals("2150", value(again, "steps[0].heats[0].at"));
    edit(desk, Map.of("act", "redo"));
    Visitor.Reply last = edit(desk, Map.of("act", "redo"));
    assertEquals("0.01", value(last, "steps[4].depth"));
  }

  @Test
  void twoWindowsChangeOneBillet() throws IOException {
    String desk = begun("three-layers", "us", "");
    String shown = number(smith.get(desk));
    assertEquals(303, edit(desk, shown, Map.of("steps[0].heats[0].at", "2150")).status());
    // another field of the same old text: both hold
    assertEquals(303, edit(desk, shown, Map.of("steps[0].heats[0].for", "6")).status());
    assertEquals("2150", value(smith.get(desk), "steps[0].heats[0].at"));
    // the same field to something else: told with both values, nothing lost
    Visitor.Reply refused = edit(desk, shown, Map.of("steps[0].heats[0].at", "2100"));
    assertEquals(409, refused.status());
    String notice = refused.body().replaceAll("(?s).*id=\"notice\"[^>]*>|</p>.*", "");
    assertTrue(notice.contains("2150") && notice.contains("2100"), notice);
    assertEquals("2150", value(smith.get(desk), "steps[0].heats[0].at"));
    // what changes the order of steps has to know them
    assertEquals(409, edit(desk, shown, Map.of("act", "out steps[0]")).status());
    assertEquals("5/16", value(smith.get(desk), "steps[1].thickness"));
  }

  @Test
  void anotherWindowHearsOfAChange() throws Exception {
    String desk = begun("three-layers", "us", "");
    assertEquals(204, smith.get(desk + "/news?rev=1&hold=0").status());
    CompletableFuture<Visitor.Reply> held =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return smith.get(desk + "/news?rev=1&hold=1");
              } catch (IOException e) {
                throw new AssertionError(e);
              }
            });
    edit(desk, Map.of("steps[0].heats[0].at", "2150"));
    assertEquals("2", held.get().body());
    assertEquals(204, smith.get("/news?hold=0").status());
  }

  @Test
  void nothingThatIsTypedIsTakenForTheePageItself() throws IOException {
    String evil = "\"><script>alert(1)</script>&amp;'";
    String desk = begun("three-layers", "us", "");
    Visitor.Reply bench =
        edit(
            desk,
            Map.of(
                "name",
                evil,
                "stack.steels[0]",
                evil,
                "steps[0].faces",
                evil,
                "steps[0].note",
                evil,
                "steps[0].heats[0].at",
                evil));
    assertFalse(bench.body().contains("<script>alert"), bench.body());
    assertTrue(
        bench.body().contains("&lt;script&gt;alert") || bench.body().contains("&#34;"), "told");
    assertEquals(400, edit(desk, number(bench), Map.of("nonsense", "1")).status());
    assertEquals(400, edit(desk, number(bench), Map.of("act", "explode")).status());
    assertEquals(400, edit(desk, "x", Map.of()).status());
    assertEquals(409, edit(desk, "999", Map.of()).status());
    assertEquals(400, smith.get(desk + "/answer?stage=LATER").status());
    assertEquals(404, smith.get("/d/99").status());
    assertEquals(404, smith.get(desk + "/secrets").status());
  }
}
