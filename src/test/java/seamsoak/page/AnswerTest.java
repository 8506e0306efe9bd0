package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import seamsoak.support.Ran;
import seamsoak.unit.UnitSystem;

/** The answer comes in stages, and a newer text stops that to an older one. */
@Tag("slow")
@Timeout(180)
class AnswerTest extends FormsOnly {
  private String opened(String billet) throws IOException {
    Files.copy(Path.of("alloy-data/billets").resolve(billet), folder.resolve(billet));
    return smith.post("/open", Map.of("file", billet)).header("Location");
  }

  private static String data(Visitor.Reply reply, String name) {
    Matcher m = Pattern.compile("data-" + name + "=\"([^\"]*)\"").matcher(reply.body());
    return m.find() ? m.group(1) : "";
  }

  private Visitor.Reply next(String desk, Visitor.Reply before) throws IOException {
    return smith.get(
        "%s/answer?rev=%s&stage=%s&done=%s"
            .formatted(desk, data(before, "rev"), data(before, "stage"), data(before, "done")));
  }

  @Test
  void firstTheLikelyCaseThenHowSure() throws IOException {
    String desk = opened("san-mai.json");
    Visitor.Reply reply = smith.get(desk);
    List<String> stages = new ArrayList<>();
    while (data(reply, "whole").isEmpty()) {
      reply = next(desk, reply);
      stages.add(data(reply, "stage"));
    }
    assertEquals("BAND", stages.get(stages.size() - 1));
    assertTrue(stages.contains("MIDDLE"), stages.toString());
    // the same answer that the command line gives
    Path out = folder.resolve("out");
    String file = folder.resolve("san-mai.json").toString();
    String cases = Integer.toString(Pageful.CASES);
    assertEquals(0, Ran.run("plan", file, "--samples", cases, "--out", out.toString()).code());
    String report = Files.readString(out.resolve("report.html"));
    for (String part : List.of("<h2 id=\"answer\">", "<p class=\"also\">", "<p class=\"why\">")) {
      assertEquals(said(report, part), said(reply.body(), part));
    }
    assertTrue(said(reply.body(), "<h2 id=\"answer\">").length() > 10);
  }

  private static String said(String html, String start) {
    int from = html.indexOf(start);
    return from < 0 ? "" : html.substring(from + start.length(), html.indexOf("</", from));
  }

  /** In the units asked for, whatever those of the billet are. */
  @ParameterizedTest
  @EnumSource(names = {"US", "METRIC"})
  void inTheUnitsAskedFor(UnitSystem units) throws IOException {
    page.close();
    page = Pageful.open(folder, Optional.of(units));
    smith = Visitor.in(page);
    String bench = smith.get(opened("san-mai.json")).body();
    assertTrue(bench.contains(units.show("1.38 x 0.67 in", "35.0 x 17.0 mm")));
    assertFalse(bench.contains(units.show("35.0 x 17.0 mm", "1.38 x 0.67 in")));
  }

  @Test
  void aNewerTextStopsTheOlderAnswer() throws Exception {
    String desk = opened("mosaic.json");
    Visitor.Reply first = smith.get(desk);
    Visitor.Reply middle = next(desk, first);
    assertEquals("MIDDLE", data(middle, "stage"));
    CompletableFuture<Visitor.Reply> held =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                Visitor.Reply reply = middle;
                while (data(reply, "whole").isEmpty() && data(reply, "rev").equals("1")) {
                  reply = next(desk, reply);
                }
                return reply;
              } catch (IOException e) {
                throw new AssertionError(e);
              }
            });
    for (int i = 2; i <= 6; i++) {
      Map<String, String> change =
          Map.of("rev", "" + (i - 1), "steps[0].heats[0].for", i + 10 + " min");
      assertEquals(303, smith.post(desk + "/edit", change).status());
      smith.get(desk);
    }
    Visitor.Reply after = held.get();
    assertTrue(Integer.parseInt(data(after, "rev")) > 1, "whoever waited is told of the newer");
    Visitor.Reply reply = smith.get(desk);
    while (data(reply, "whole").isEmpty()) {
      reply = next(desk, reply);
    }
    assertEquals("6", data(reply, "rev"));
    assertEquals("BAND", data(reply, "stage"));
  }

  @Test
  void withoutTheScriptTheAnswerLoadsItselfUntilItIsWhole() throws IOException {
    String desk = opened("san-mai.json");
    Visitor.Reply reply = smith.get(desk + "/answer?rev=1");
    int times = 0;
    while (data(reply, "whole").isEmpty()) {
      assertTrue(reply.body().contains("http-equiv=\"refresh\""), reply.body());
      reply = smith.get(desk + "/answer?rev=1");
      assertTrue(++times < 100, "it never comes");
    }
    assertFalse(reply.body().contains("http-equiv=\"refresh\""));
    assertTrue(reply.body().contains("id=\"answer\""));
  }

  @Test
  void anotherSoakIsChosenFromAListWithoutTheScript() throws IOException {
    String desk = smith.post("/new", Map.of("pattern", "mosaic")).header("Location");
    Visitor.Reply reply = smith.get(desk);
    while (data(reply, "whole").isEmpty()) {
      reply = next(desk, reply);
    }
    String asked = smith.get(desk + "/answer?rev=1&soak=1050").body();
    assertTrue(asked.contains("id=\"fold-soak\" open"), asked);
    assertTrue(asked.contains("<option value=\"1050\" selected>1920 F"), asked);
    assertTrue(said(asked, "id=\"soak-says\" role=\"status\">").startsWith("At 1920 F: "), asked);
    for (String none : List.of("-1", "NaN", "1e9", "%3Cscript%3E", "")) {
      String other = smith.get(desk + "/answer?rev=1&soak=" + none).body();
      assertTrue(
          said(other, "id=\"soak-says\" role=\"status\">")
              .contains("This is the soak advised, for "));
    }
  }

  @Test
  void aPlanIsKeptAndHeldAgainstWhatIsChanged() throws IOException {
    String desk = smith.post("/new", Map.of("pattern", "mosaic")).header("Location");
    assertEquals(409, smith.post(desk + "/keep", Map.of("rev", "1", "how", "keep")).status());
    Visitor.Reply a = whole(desk);
    assertTrue(a.body().contains("Keep as plan A"), a.body());
    assertEquals(409, smith.post(desk + "/keep", Map.of("rev", "7", "how", "keep")).status());
    assertEquals(400, smith.post(desk + "/keep", Map.of("rev", "1", "how", "burn")).status());
    assertEquals(303, smith.post(desk + "/keep", Map.of("rev", "1", "how", "keep")).status());
    assertTrue(smith.get(desk).body().contains("Nothing differs from plan A."));
    edit(desk, Map.of("steps[6].grind", "0.03 in"));
    String b = whole(desk).body();
    assertEquals("1/4 in", cell(b, "thickness", 1));
    assertEquals(cell(b, "thickness", 0), cell(b, "thickness", 1));
    String missing = "carbon missing at tile joints (step 7)";
    double before = Double.parseDouble(cell(b, missing, 0).replace(" %", ""));
    double after = Double.parseDouble(cell(b, missing, 1).replace(" %", ""));
    assertTrue(after < before, "deeper grinding leaves less of the skin");
    assertEquals("%.2f %% less".formatted(before - after), cell(b, missing, 2));
    assertEquals(said(a.body(), "<h2 id=\"answer\">"), cell(b, "answer", 0));
    assertEquals(said(b, "<h2 id=\"answer\">"), cell(b, "answer", 1));
    smith.post(desk + "/keep", Map.of("how", "back"));
    assertEquals("0.01", value(smith.get(desk), "steps[6].grind"));
    assertTrue(whole(desk).body().contains("Nothing differs from plan A."));
    smith.post(desk + "/keep", Map.of("how", "forget"));
    assertFalse(smith.get(desk).body().contains("Beside plan A"));
  }

  private Visitor.Reply whole(String desk) throws IOException {
    Visitor.Reply reply = smith.get(desk);
    while (data(reply, "whole").isEmpty()) {
      reply = next(desk, reply);
    }
    return reply;
  }

  /** What stands in a row of the comparison. */
  private static String cell(String html, String row, int column) {
    int from = html.indexOf("<th scope=\"row\">" + row + "</th>");
    assertTrue(from > 0, row + " in " + html);
    Matcher m = Pattern.compile("<td[^>]*>([^<]*)</td>").matcher(html.substring(from));
    for (int i = 0; i <= column; i++) {
      assertTrue(m.find());
    }
    return m.group(1);
  }

  @Test
  void theCardIsAPageOfItsOwnUnderItsOwnSeal() throws IOException {
    String desk = opened("san-mai.json");
    Visitor.Reply reply = smith.get(desk);
    while (data(reply, "whole").isEmpty()) {
      reply = next(desk, reply);
    }
    Visitor.Reply card = smith.get(desk + "/card?rev=1");
    assertEquals(200, card.status());
    assertTrue(card.body().contains("Shop card."), card.body());
    assertTrue(
        card.header("Content-Security-Policy").startsWith("default-src 'none'; style-src 'sha256-"),
        card.head());
    assertTrue(card.body().contains("Cheese knife"));
  }

  @Test
  void theKilnsProgramAndWhatAllRestsOnAreThoseOfTheCommands() throws IOException {
    String desk = opened("san-mai.json");
    assertEquals(404, smith.get(desk + "/kiln.csv").status(), "not before there is an answer");
    whole(desk);
    Path csv = folder.resolve("kiln.csv");
    String file = folder.resolve("san-mai.json").toString();
    Ran.run("schedule", file, "--program", csv.toString());
    Visitor.Reply reply = smith.get(desk + "/kiln.csv");
    assertEquals(200, reply.status());
    assertEquals("attachment; filename=\"kiln.csv\"", reply.header("Content-Disposition"));
    assertEquals(Files.readString(csv), reply.body());
    String rests = smith.get(desk + "/sources").body();
    assertTrue(rests.contains("What each number rests on"), rests);
    assertTrue(rests.contains("van Bohemen"), rests);
  }

  /**
   * Hotter leaves less of the lines, and the picture differs; what cannot be drawn is not there.
   */
  @Test
  void theFaceIsDrawnAfterTheSoakThatIsLookedAt() throws IOException {
    String desk = opened("mosaic.json");
    assertEquals(404, smith.get(desk + "/face.png").status(), "not before there is an answer");
    whole(desk);
    Visitor.Reply cool = smith.get(desk + "/face.png?rev=1&soak=800");
    Visitor.Reply hot = smith.get(desk + "/face.png?rev=1&soak=1150");
    for (Visitor.Reply reply : List.of(cool, hot)) {
      assertEquals(200, reply.status());
      assertEquals("image/png", reply.header("Content-Type"));
    }
    assertNotEquals(cool.body(), hot.body());
    assertEquals(
        smith.get(desk + "/face.png").body(),
        smith.get(desk + "/face.png?soak=%3Cscript%3E").body(),
        "of no soak of ours it is that of the one advised");
  }

  @Test
  void aBilletThatIsRefusedIsToldSo() throws IOException {
    String desk = opened("galvanized-jacket.json");
    Visitor.Reply reply = smith.get(desk);
    while (data(reply, "whole").isEmpty()) {
      reply = next(desk, reply);
    }
    assertTrue(reply.body().contains("Do not do this."), reply.body());
    assertTrue(reply.body().contains("Not to be done as it is written"), reply.body());
  }
}
