package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Ran;

/** Several billets in one kiln: loads that their own schedules would agree to, or the reason. */
class KilnCommandTest {
  private static final String DEMO = "alloy-data/billets/";
  private static final List<String> THREE =
      List.of(DEMO + "mosaic.json", DEMO + "san-mai.json", DEMO + "galvanized-jacket.json");

  /** A window that an answer rounds, K. */
  private static final double NEAR = 6.001;

  /** What six digits leave of a number of minutes. */
  private static final double ROUNDED = 1e-3;

  private static Ran three;

  @TempDir private Path folder;

  @BeforeAll
  static void once() {
    three = kiln(THREE, "--json");
  }

  private static Ran kiln(List<String> files, String... more) {
    List<String> words = new ArrayList<>(List.of("kiln", "--samples", "0"));
    words.addAll(files);
    words.addAll(List.of(more));
    return Ran.run(words.toArray(String[]::new));
  }

  private String bar(String name, String steel, String thickness, String more) throws IOException {
    String text =
        """
        { "name": "%s", "units": "metric", %s
          "stack": { "layers": 1, "steels": ["%s"], "thickness": [%s], "width": 40, "length": 150 },
          "steps": [ { "do": "draw", "thickness": %s, "width": 41, "heats": [{ "at": 1080, "for": 3 }] } ] }
        """
            .formatted(name, more, steel, thickness, Double.parseDouble(thickness) - 1);
    return Files.writeString(folder.resolve(name + ".json"), text).toString();
  }

  /** Every step of the kiln that a billet's own schedule has is in one load, in its order. */
  @Test
  void nothingIsLeftOutAndNothingTwice() {
    for (int billet = 1; billet <= THREE.size(); billet++) {
      Ran own = Ran.run("schedule", THREE.get(billet - 1), "--samples", "0", "--json");
      List<String> wanted = new ArrayList<>();
      for (int i = 0; i < own.list("steps").size(); i++) {
        if (own.text("steps." + i + ".in").equals("kiln")) {
          wanted.add(own.text("steps." + i + ".step"));
        }
      }
      List<String> loaded = new ArrayList<>();
      for (String piece : pieces(three)) {
        if (three.number(piece + "billet") == billet) {
          loaded.add(three.text(piece + "step"));
        }
      }
      assertEquals(wanted, loaded, THREE.get(billet - 1));
    }
  }

  private static List<String> pieces(Ran ran) {
    List<String> all = new ArrayList<>();
    for (int l = 0; l < ran.list("loads").size(); l++) {
      for (int p = 0; p < ran.list("loads." + l + ".pieces").size(); p++) {
        all.add("loads." + l + ".pieces." + p + ".");
      }
    }
    return all;
  }

  private static double heat(Ran ran, String piece) {
    return ran.number(piece.replaceFirst("pieces.*", "temperatureC"));
  }

  @Test
  void theHeatAndTheHoldDoForAllInIt() {
    int shared = 0;
    for (String p : pieces(three)) {
      double celsius = heat(three, p);
      assertTrue(celsius >= three.number(p + "lowC") - NEAR, p);
      assertTrue(celsius <= three.number(p + "highC") + NEAR, p);
      double held = three.number(p + "heldMinutes");
      assertTrue(held >= three.number(p + "leastMinutes") - 1e-6, p);
      if (known(three, p + "mostMinutes")) {
        assertTrue(held <= three.number(p + "mostMinutes") + 1e-6, p);
      }
      if (known(three, p + "hrc")) {
        assertEquals(three.number(p + "plannedHrc"), three.number(p + "hrc"), 1.0, p);
      }
      shared += p.contains("pieces.1.") ? 1 : 0;
    }
    assertTrue(shared >= 5, shared + " loads with more than one");
  }

  private static boolean known(Ran ran, String path) {
    return !ran.at(path).toString().contains("Null");
  }

  @Test
  void theyLeaveOneByOneAndQuenchesTakeTheirTurn() {
    for (int l = 0; l < three.list("loads").size(); l++) {
      double last = 0;
      for (int p = 0; p < three.list("loads." + l + ".pieces").size(); p++) {
        String piece = "loads." + l + ".pieces." + p + ".";
        if (known(three, piece + "outMinutes")) {
          double out = three.number(piece + "outMinutes");
          boolean quench = three.text(piece + "then").equals("quench");
          assertTrue(out >= last + (quench && p > 0 ? 3 : 0) - ROUNDED, piece);
          last = out;
        }
      }
    }
  }

  @Test
  void aRefusedBilletIsRefusedHereToo() {
    assertEquals(4, three.code());
    assertEquals(1, three.list("billets.2.hardStops").size());
    String said = kiln(THREE).out();
    assertTrue(said.startsWith("C: Do not do this."), said);
  }

  /** Two alike go together throughout, at the heats of their own schedule. */
  @Test
  void twoAlikeShareAllOfIt() throws IOException {
    String bar = bar("one", "1084", "6", "");
    Ran ran = kiln(List.of(bar, bar), "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("together", ran.text("verdict"));
    assertEquals(2 * ran.list("loads").size(), ran.number("loadsAlone"));
    for (String p : pieces(ran)) {
      assertEquals(ran.number(p + "plannedC"), heat(ran, p), 1e-9, p);
    }
  }

  /** The thicker is held as long as it needs, and the thinner no longer than does no harm. */
  @Test
  void theThinnerWaitsForItsTurnOrGoesInLater() throws IOException {
    Ran ran = kiln(List.of(bar("thin", "1084", "3", ""), bar("thick", "1084", "26", "")), "--json");
    assertEquals("together", ran.text("verdict"));
    String harden = load(ran, "harden");
    assertEquals(1, ran.number(harden + "pieces.0.billet"));
    assertTrue(
        ran.number(harden + "pieces.0.outMinutes") + 3
            <= ran.number(harden + "pieces.1.outMinutes") + ROUNDED);
  }

  private static String load(Ran ran, String kind) {
    for (int l = 0; l < ran.list("loads").size(); l++) {
      if (ran.text("loads." + l + ".kind").equals(kind)) {
        return "loads." + l + ".";
      }
    }
    throw new AssertionError("no " + kind + " in " + ran.out());
  }

  /** Common practice: D2 wants 1010 C and more, which ruins O1. */
  @Test
  void o1AndD2DoNotGoTogether() throws IOException {
    Ran ran = kiln(List.of(bar("o1", "O1", "6", ""), bar("d2", "D2", "6", "")), "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("not-together", ran.text("verdict"));
    assertEquals(ran.list("loads").size(), ran.number("loadsAlone"));
    boolean told = false;
    for (int i = 0; i < ran.list("apart").size(); i++) {
      String a = "apart." + i + ".";
      if (ran.text(a + "whyKind").equals("by-sheet")) {
        told = true;
        assertEquals("harden", ran.text(a + "step"));
        assertEquals(2, ran.number(a + "sheet.billet"));
        assertTrue(ran.number(a + "sheet.lowC") > ran.number(a + "parted.0.highC") + 100);
      }
    }
    assertTrue(told, ran.out());
  }

  /** Normalizing would undo the quench of one that is hard, and its temper does not wait. */
  @Test
  void whatIsHardStaysOut() throws IOException {
    String hard =
        Files.readString(Path.of(bar("hard", "1084", "6", "")))
            .replace(
                "\"for\": 3 }] } ]",
                "\"for\": 3, \"done\": [{}] }] }, { \"do\": \"harden\","
                    + " \"in\": \"oil-fast\", \"heats\": [{ \"at\": 815, \"for\": 10, \"done\": [{}] }] } ]");
    Path file = Files.writeString(folder.resolve("hard.json"), hard);
    Ran ran = kiln(List.of(file.toString(), bar("soft", "5160", "6", "")), "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("temper", ran.text("loads.0.kind"));
    assertEquals(1, ran.number("loads.0.pieces.0.billet"));
    String normalize = load(ran, "normalize");
    assertEquals(1, ran.number(normalize + "out.0.billet"));
    assertEquals("undoes-quench", ran.text(normalize + "out.0.whyKind"));
  }

  /** Below Ac1 a cooler heat is made up for by a longer hold, never the other way round. */
  @Test
  void aCoolerAnnealIsLonger() {
    String anneal = load(three, "anneal");
    for (int p = 0; p < 3; p++) {
      String piece = anneal + "pieces." + p + ".";
      double cooler = three.number(piece + "plannedC") - three.number(anneal + "temperatureC");
      assertTrue(cooler >= 0, piece);
      assertEquals(cooler > 1, three.number(piece + "leastMinutes") > 61, piece);
    }
  }

  @Test
  void theCoolestKilnIsTaken() throws IOException {
    String weak = "\"equipment\": { \"kiln\": { \"highest\": \"820 C\" } },";
    Ran ran = kiln(List.of(bar("weak", "1084", "6", weak), bar("o1", "5160", "6", "")), "--json");
    assertEquals(820, ran.number("kilnC"), 1e-9);
    for (String p : pieces(ran)) {
      assertTrue(heat(ran, p) <= 820.5, p);
    }
    assertTrue(ran.out().contains("kiln-too-cool"), ran.out());
    assertTrue(ran.out().contains("kilns-differ"), ran.out());
  }

  @Test
  void aForgeAloneIsToldSo() throws IOException {
    String none = "\"equipment\": { \"kiln\": \"none\" },";
    Ran ran = kiln(List.of(bar("forge", "1084", "6", none), bar("b", "1084", "6", "")), "--json");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("no-kiln"), ran.out());
    assertTrue(ran.out().contains("elsewhere"), ran.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | give two billets' files or more | ",
        "2 | give two billets' files or more | one",
        "2 | give two billets' files or more | one one one one one one one one one",
        "3 | there is no such file | one none",
      })
  void whatIsNoQuestionIsToldSo(int code, String words, String files) throws IOException {
    bar("one", "1084", "6", "");
    Ran ran =
        kiln(
            Stream.of((files == null ? "" : files).split(" "))
                .filter(f -> !f.isEmpty())
                .map(f -> folder.resolve(f + ".json").toString())
                .toList());
    assertEquals(code, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains(words), ran.err());
  }

  /** What is wrong in two files is told at once. */
  @Test
  void allFaultsOfAllFiles() throws IOException {
    Path a = Files.writeString(folder.resolve("a.json"), "{ \"stack\": 1 }");
    Path b = Files.writeString(folder.resolve("b.json"), "[]");
    Ran ran = kiln(List.of(a.toString(), b.toString()));
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("a.json") && ran.err().contains("b.json"), ran.err());
  }

  @Test
  void unitsAreThoseAskedFor() throws IOException {
    List<String> bars = List.of(bar("a", "1084", "6", ""), bar("b", "5160", "6", ""));
    String metric = kiln(bars).out();
    assertFalse(metric.matches("(?s).*[0-9] F\\b.*"), metric);
    String us = kiln(bars, "--units", "us").out();
    assertFalse(us.matches("(?s).*[0-9] C\\b.*"), us);
    assertEquals(kiln(bars, "--json").out(), kiln(bars, "--json", "--units", "us").out());
  }
}
