package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Billets built, changed and kept by forms alone, as a browser without the script sends them. */
@Timeout(120)
class DeskTest {
  @TempDir private Path folder;
  private Page page;
  private Visitor smith;

  @BeforeEach
  void open() throws IOException {
    page = Pageful.open(folder);
    smith = Visitor.in(page);
  }

  @AfterEach
  void close() {
    page.close();
  }

  private String begun(String pattern, String units, String name) throws IOException {
    Visitor.Reply reply =
        smith.post("/new", Map.of("pattern", pattern, "units", units, "name", name));
    assertEquals(303, reply.status(), reply.body());
    return reply.header("Location");
  }

  private static String number(Visitor.Reply bench) {
    Matcher m = Pattern.compile("name=\"rev\" value=\"([0-9]+)\"").matcher(bench.body());
    assertTrue(m.find(), bench.body());
    return m.group(1);
  }

  private Visitor.Reply edit(String desk, String number, Map<String, String> fields)
      throws IOException {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.put("rev", number);
    return smith.post(desk + "/edit", all);
  }

  /** Edits what is there now. */
  private Visitor.Reply edit(String desk, Map<String, String> fields) throws IOException {
    Visitor.Reply reply = edit(desk, number(smith.get(desk)), fields);
    assertEquals(303, reply.status(), reply.body());
    return smith.get(desk);
  }

  private static String value(Visitor.Reply bench, String field) {
    Matcher m =
        Pattern.compile("name=\"" + Pattern.quote(field) + "\" value=\"([^\"]*)\"")
            .matcher(bench.body());
    return m.find() ? m.group(1) : "no such field";
  }

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
  void savedByTheOneWriterAndOnlyThen() throws IOException {
    String desk = begun("three-layers", "us", "Cheese knife");
    Path file = folder.resolve("Cheese knife.json");
    assertFalse(Files.exists(file));
    edit(desk, Map.of("steps[0].heats[0].at", "2150", "act", "save"));
    String text = Files.readString(file);
    assertTrue(text.startsWith("{ \"name\": \"Cheese knife\",\n"), text);
    assertTrue(text.contains("\"at\": 2150,"), text);
    assertTrue(smith.get(desk).body().contains(">Saved<"));
    edit(desk, Map.of("steps[0].heats[0].at", "2140", "act", "save"));
    assertEquals(text, Files.readString(folder.resolve("Cheese knife.json.before")));
  }

  @Test
  void aFileThatAnotherHandChangedIsAskedAbout() throws IOException {
    Path file = folder.resolve("k.json");
    String desk = begun("three-layers", "us", "k");
    edit(desk, Map.of("act", "save"));
    String theirs = Files.readString(file).replace("2200", "2210");
    Files.writeString(file, theirs);
    edit(desk, Map.of("stack.width", "1-1/4"));
    Visitor.Reply asks = edit(desk, number(smith.get(desk)), Map.of("act", "save"));
    assertEquals(409, asks.status());
    assertTrue(asks.body().contains("Another hand has changed k.json"), asks.body());
    assertEquals(theirs, Files.readString(file));
    Visitor.Reply beside = smith.post(desk + "/save", Map.of("how", "beside"));
    assertEquals(303, beside.status());
    assertTrue(Files.readString(folder.resolve("k 2.json")).contains("1-1/4"));
    assertEquals(theirs, Files.readString(file));
  }

  @ParameterizedTest
  @CsvSource({"mine, 1-1/4, 2200", "theirs, 1-3/8, 2210"})
  void eitherMayBeTaken(String how, String width, String at) throws IOException {
    Path file = folder.resolve("k.json");
    String desk = begun("three-layers", "us", "k");
    edit(desk, Map.of("act", "save"));
    Files.writeString(file, Files.readString(file).replace("2200", "2210"));
    edit(desk, Map.of("stack.width", "1-1/4"));
    assertEquals(303, smith.post(desk + "/save", Map.of("how", how)).status());
    Visitor.Reply bench = smith.get(desk);
    assertEquals(width, value(bench, "stack.width"));
    assertEquals(at, value(bench, "steps[0].heats[0].at"));
    assertTrue(bench.body().contains(">Saved<"));
    assertTrue(Files.readString(file).contains("\"at\": " + at), "and on the disk");
  }

  @Test
  void whatWasNotSavedOutlivesTheProgram() throws Exception {
    String desk = begun("three-layers", "us", "left");
    edit(desk, Map.of("stack.width", "1-1/4"));
    page.close();
    Path drafts = folder.resolve("state").resolve("drafts");
    try (Stream<Path> files = Files.list(drafts)) {
      for (Path draft : files.toList()) {
        assertEquals(
            "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(draft)));
      }
    }
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(drafts)));
    open();
    assertTrue(smith.get("/").body().contains("changes that are not saved"));
    Visitor.Reply opened = smith.post("/open", Map.of("file", "left.json"));
    String again = opened.header("Location");
    assertEquals("1-1/4", value(smith.get(again), "stack.width"));
    edit(again, Map.of("act", "save"));
    page.close();
    open();
    assertFalse(smith.get("/").body().contains("changes that are not saved"));
    assertTrue(Files.readString(folder.resolve("left.json")).contains("1-1/4"));
  }

  @Test
  void aDraftOfAFileThatWasChangedMeanwhileIsAskedAbout() throws Exception {
    Path file = folder.resolve("k.json");
    String desk = begun("three-layers", "us", "k");
    edit(desk, Map.of("act", "save"));
    edit(desk, Map.of("stack.width", "1-1/4"));
    page.close();
    Files.writeString(file, Files.readString(file).replace("2200", "2210"));
    open();
    String again = smith.post("/open", Map.of("file", "k.json")).header("Location");
    assertEquals(409, edit(again, number(smith.get(again)), Map.of("act", "save")).status());
    assertTrue(Files.readString(file).contains("2210"));
  }

  @Test
  void changesAreThrownAwayOnlyWhenAsked() throws IOException {
    String desk = begun("three-layers", "us", "gone");
    assertEquals(303, smith.post(desk + "/drop", Map.of()).status());
    assertEquals(404, smith.get(desk).status());
    assertFalse(smith.get("/").body().contains("gone"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../x",
        "a/b",
        "..",
        ".hidden",
        "con",
        "NUL.txt",
        "a\\b",
        "a:b",
        "x\u0000",
        "\u202Ex",
        "a\nb",
        "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
        "%2e%2e"
      })
  void namesStayInTheFolder(String name) throws IOException {
    Visitor.Reply reply =
        smith.post("/new", Map.of("pattern", "mosaic", "units", "us", "name", name));
    assertEquals(409, reply.status(), name);
    assertTrue(reply.body().contains("A name has 1 to 80 letters"), reply.body());
    assertEquals(404, smith.post("/open", Map.of("file", name)).status());
    assertEquals(404, smith.post("/open", Map.of("file", "../" + folder.getFileName())).status());
  }

  @Test
  void aFileWithASlipIsListedAndToldWhy() throws IOException {
    Files.writeString(folder.resolve("slip.json"), "{ \"stack\": ");
    Files.writeString(folder.resolve("other.json"), "{ \"a\": 1 }");
    String shelf = smith.get("/").body();
    assertTrue(shelf.contains("cannot be read: the file ends too early"), shelf);
    assertFalse(shelf.contains("other.json"), shelf);
    Visitor.Reply opened = smith.post("/open", Map.of("file", "slip.json"));
    assertEquals(409, opened.status());
    assertTrue(opened.body().contains("The file ends too early"), opened.body());
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

  @Test
  void aFileOfTheSmithsKeepsItsCommentsAndWhatNoFormShows() throws IOException {
    Path file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    String before = Files.readString(file);
    String desk = smith.post("/open", Map.of("file", "mosaic.json")).header("Location");
    edit(desk, Map.of("steps[0].heats[0].for", "6 min", "act", "save"));
    String after = Files.readString(file);
    assertNotEquals(before, after);
    assertEquals(before, after.replaceFirst("\"for\": \"6 min\"", "\"for\": \"5 min\""));
  }

  @Test
  void theFileIsHandedOutToBeKept() throws IOException {
    String desk = begun("three-layers", "us", "");
    Visitor.Reply file = smith.get(desk + "/billet.json");
    assertTrue(file.header("Content-Disposition").startsWith("attachment"), file.head());
    assertTrue(file.body().startsWith("{ \"name\": \"new billet\""), file.body());
  }
}
