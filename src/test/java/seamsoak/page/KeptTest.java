package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Billets saved, kept as drafts, and asked about where another hand has changed them. */
@Timeout(120)
class KeptTest extends FormsOnly {
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
  void theProgramIsEndedByAButtonAndSaysSo() throws Exception {
    Visitor.Reply reply = smith.post("/end", Map.of());
    assertEquals(200, reply.status());
    assertTrue(reply.body().contains("The program has ended."), reply.body());
    page.await();
  }

  @Test
  void theFileIsHandedOutToBeKept() throws IOException {
    String desk = begun("three-layers", "us", "");
    Visitor.Reply file = smith.get(desk + "/billet.json");
    assertTrue(file.header("Content-Disposition").startsWith("attachment"), file.head());
    assertTrue(file.body().startsWith("{ \"name\": \"new billet\""), file.body());
  }
}
