package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.JsonValue;
import seamsoak.support.Ran;

/** What {@code check} says of a billet file. */
@Tag("slow")
class CheckAnswerTest {
  private static final String MOSAIC = "alloy-data/billets/mosaic.json";

  /** Readable throughout, but its second step asks for more than there is. */
  private static final String TOO_MUCH =
      """
      { "units": "us",
        "stack": { "layers": 3, "steels": ["1084"], "thickness": 0.2, "width": 1.25, "length": 6 },
        "steps": [
          { "do": "weld", "heats": [{ "at": 2200, "for": 5 }] },
          { "do": "draw", "thickness": 2, "width": 2, "heats": [{ "at": 2000, "for": 2 }] },
          { "do": "roll", "thickness": 9, "heats": [{ "at": 2000, "for": 2 }] } ] }
      """;

  @TempDir private Path folder;

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("mine.json"), text).toString();
  }

  @Test
  void aGoodFileIsToldItsSizesAndWhatIsAssumed() {
    Ran ran = Ran.run("check", MOSAIC);
    assertEquals(0, ran.code(), ran.err());
    assertEquals("", ran.err());
    assertTrue(ran.out().startsWith("It can be made as written: in 15 steps a stack of 1-7/16 in"));
    assertTrue(ran.out().contains("15 roll"), ran.out());
    assertTrue(ran.out().contains("Assumed, since the file does not say"), ran.out());
    assertTrue(ran.out().endsWith(" soak " + MOSAIC + "\n"), ran.out());
  }

  /** Checking and soaking walk the same billet. */
  @Test
  void itsSizesAreThoseOfTheSoak() {
    Ran check = Ran.run("check", MOSAIC, "--json");
    Ran soak = Ran.run("soak", MOSAIC, "--samples", "0", "--json");
    assertEquals(0, check.code(), check.err());
    assertEquals(16, check.list("sizes").size());
    assertEquals(16, soak.list("history").size());
    for (int i = 0; i < 16; i++) {
      assertEquals(soak.text("history." + i + ".do"), check.text("sizes." + i + ".do"));
      for (String size : List.of("step", "lengthMm", "widthMm", "thicknessMm")) {
        assertEquals(
            soak.number("history." + i + "." + size), check.number("sizes." + i + "." + size));
      }
    }
    assertEquals(soak.list("defaults").size(), check.list("assumed").size());
    assertEquals(List.of(), check.list("faults"));
  }

  @Test
  void jsonHasEveryFaultAndNothingElseIsSaid() throws IOException {
    String bad =
        TOO_MUCH
            .replace("\"1084\"", "\"1083\"")
            .replace("\"length\": 6", "\"lenght\": 6")
            .replace("\"draw\"", "\"drew\"");
    Ran ran = Ran.run("check", file(bad), "--json");
    assertEquals(3, ran.code());
    assertEquals("", ran.err());
    assertEquals("check", ran.text("command"));
    assertEquals(new JsonValue.NullValue(ran.at("billet").place()), ran.at("billet"));
    assertEquals(
        List.of("file", "line", "column", "field", "found", "expected"), ran.names("faults.0"));
    assertEquals(3, ran.list("faults").size());
    assertEquals(folder.resolve("mine.json").toString(), ran.text("faults.0.file"));
    assertEquals(2, ran.number("faults.0.line"));
    assertEquals(38, ran.number("faults.0.column"));
    assertEquals("stack.steels[0]", ran.text("faults.0.field"));
    assertEquals("there is no steel '1083'", ran.text("faults.0.found"));
    assertEquals("did you mean '1080'?", ran.text("faults.0.expected"));
    assertEquals("stack.lenght", ran.text("faults.1.field"));
    assertEquals("steps[1].do", ran.text("faults.2.field"));
    assertEquals(List.of(), ran.list("sizes"));
    assertEquals(List.of(), ran.list("assumed"));
  }

  /** What comes after a step that cannot be done cannot be known. */
  @Test
  void aStepThatCannotBeDoneIsOneFaultAndEndsTheSizes() throws IOException {
    Ran ran = Ran.run("check", file(TOO_MUCH), "--json");
    assertEquals(3, ran.code());
    assertEquals(1, ran.list("faults").size());
    assertEquals(5, ran.number("faults.0.line"));
    assertEquals("steps[1]", ran.text("faults.0.field"));
    assertTrue(ran.text("faults.0.found").contains("a section of 2 in by 2 in asked"));
    assertFalse(ran.text("faults.0.found").contains("mm"), "the file is in inches");
    assertEquals(2, ran.list("sizes").size());
    assertFalse(ran.list("assumed").isEmpty());
  }

  /** Without JSON the faults are told as by every other command. */
  @ParameterizedTest
  @ValueSource(strings = {"1084", "1083"})
  void itsSentencesAreThoseOfTheOtherCommands(String steel) throws IOException {
    String bad = file(TOO_MUCH.replace("1084", steel));
    Ran check = Ran.run("check", bad);
    assertEquals(3, check.code());
    assertEquals("", check.out());
    assertEquals(Ran.run("soak", bad, "--samples", "0").err(), check.err());
  }

  @Test
  void unitsAreThoseOfTheFileUnlessOthersAreAskedFor() throws IOException {
    String good =
        file(
            TOO_MUCH
                .replace("\"thickness\": 2, \"width\": 2", "\"thickness\": 0.4, \"width\": 1")
                .replace("\"thickness\": 9", "\"thickness\": 0.25"));
    String us = Ran.run("check", good).out();
    assertTrue(us.contains("thick in") && !us.contains(" mm"), us);
    String metric = Ran.run("check", good, "--units", "metric").out();
    assertTrue(metric.contains("thick mm") && !metric.contains(" in  "), metric);
    assertEquals(
        Ran.run("check", good, "--json").out(),
        Ran.run("check", good, "--json", "--units", "us").out());
  }

  /** What was written otherwise once is understood, and told. */
  @Test
  void oldWordsAreToldWithTheirLines() throws IOException {
    String old =
        """
        { "units": "us",
          "stack": { "layers": 3, "steels": ["1084", "75Ni8"], "thickness": 0.2, "width": 1.25,
            "length": 6 },
          "steps": [
            { "do": "weld", "heats": [{ "at": 2200, "for": 5 }],
              "seen": [{ "seams": "layers", "line": "clear" },
                { "seams": "layers", "line": "plain" }] } ],
          "blade": { "edge": "1084" } }
        """;
    Ran check = Ran.run("check", file(old), "--json");
    assertEquals(0, check.code(), check.err());
    List<String> kinds = List.of("seams", "clear", "seams", "edge");
    for (int i = 0; i < kinds.size(); i++) {
      assertEquals(kinds.get(i), check.text("oldWordKinds." + i));
    }
    assertEquals(kinds.size(), check.list("oldWords").size());
    assertTrue(check.text("oldWords.0").startsWith("Line 6: \"seams\" is an old word"));
    for (String command : List.of("check", "soak")) {
      String said = Ran.run(command, file(old), "--full").out().replaceAll("\\s+", " ");
      assertTrue(said.contains("Lines 6, 7: \"seams\" is an old word"), said);
      assertTrue(said.contains("Line 6: a line that is \"clear\""), said);
      assertTrue(said.contains("Line 8: a steel under \"edge\""), said);
    }
    String now =
        old.replace("seams", "where").replace("clear", "plain").replace("\"edge\"", "\"cuts\"");
    assertEquals(List.of(), Ran.run("check", file(now), "--json").list("oldWords"));
  }

  /** Steels that clash are told before anything is forged, as {@code pair} tells them. */
  @Test
  void steelsThatDoNotGoTogetherAreTold() throws IOException {
    String clad =
        """
        { "units": "us",
          "stack": { "layers": 3, "steels": ["304", "52100"], "thickness": 0.2, "width": 1.25,
            "length": 6 },
          "steps": [ { "do": "weld", "heats": [{ "at": 2100, "for": 5 }] } ] }
        """;
    String said = Ran.run("check", file(clad)).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("304 with 52100: clash, by chromium oxide"), said);
    Ran json = Ran.run("check", file(clad), "--json");
    assertEquals(1, json.list("pairs").size());
    assertEquals("clash", json.text("pairs.0.rating"));
    assertEquals(Ran.run("pair", "304", "52100", "--json").text("rating"), "clash");
    Ran fits = Ran.run("check", MOSAIC);
    assertFalse(fits.out().contains("clash"), fits.out());
  }

  @Test
  void whatSafetyForbidsIsSaidFirst() {
    Ran ran = Ran.run("check", "alloy-data/billets/galvanized-jacket.json");
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Do not do this. step 3 tile: The jacket is galvanized"));
    assertFalse(ran.out().contains("Next: "), ran.out());
  }

  @Test
  void aFileThatIsNotThereIsAFaultToo() {
    Ran ran = Ran.run("check", folder.resolve("none.json").toString(), "--json");
    assertEquals(3, ran.code());
    assertEquals("there is no such file", ran.text("faults.0.found"));
    for (String name : List.of("line", "column", "field")) {
      assertTrue(ran.at("faults.0." + name) instanceof JsonValue.NullValue, name);
    }
  }
}
