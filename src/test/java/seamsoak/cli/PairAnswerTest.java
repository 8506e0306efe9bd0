package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Ran;

/** What pair and pairs say. */
class PairAnswerTest {
  @TempDir private Path folder;

  @Test
  void jsonKeepsToTheContract() {
    Ran ran = Ran.run("pair", "O1", "1084", "--json");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.names("").containsAll(List.of("first", "second", "rating", "checks")));
    assertEquals("O1", ran.text("first"));
    assertEquals("watch", ran.text("rating"));
    for (int i = 0; i < ran.list("checks").size(); i++) {
      assertTrue(
          ran.names("checks." + i)
              .containsAll(
                  List.of("name", "rating", "first", "second", "gap", "unit", "reason", "source")));
    }
    assertEquals("hardenability", ran.text("checks.0.name"));
  }

  @Test
  void theAnswerComesFirstAndFitsATerminal() {
    for (String units : List.of("us", "metric", "both")) {
      Ran ran = Ran.run("pair", "D2", "1084", "--units", units);
      assertTrue(ran.out().startsWith("D2 with 1084: clash"), ran.out());
      assertTrue(ran.out().contains("What would make it work"), ran.out());
      ran.out().lines().forEach(l -> assertTrue(l.length() <= 80, l));
    }
    assertFalse(Ran.run("pair", "D2", "1084", "--units", "us").out().contains(" C)"));
    assertTrue(Ran.run("pair", "1084", "75Ni8").out().startsWith("1084 with 75Ni8: fits."));
  }

  @ParameterizedTest
  @CsvSource({"1084, 75Ni8", "1095, 1018", "52100, 1084"})
  void theQuickEstimateForTablesIsNearWhatIsSolved(String first, String second) {
    Ran ran = Ran.run("pair", first, second, "--layer", "2mm", "--json");
    int at = 0;
    while (!ran.text("checks." + at + ".name").equals("carbon-loss")) {
      at++;
    }
    double start = Ran.run("steels", first, "--json").number("analysisPct.C");
    double quick = start - ran.number("checks." + at + ".first");
    double solved = start - ran.number("carbon.firstMeanPct");
    // one diffusivity, the slowest term of the series and no rise against the solver: they have
    // to tell the same story, which a factor of two allows
    assertTrue(quick / solved > 0.5 && quick / solved < 2, quick + " " + solved);
  }

  @Test
  void weldHeatsAreCountedAlready() {
    Ran ran = Ran.run("pair", "1095", "1018", "--layer", "1mm", "--json");
    Ran hold =
        Ran.run(
            "migrate",
            "1095",
            "1018",
            "--layer",
            "1mm",
            "--at",
            ran.number("how.weldingC") + "C",
            "--for",
            "1min",
            "--json");
    double left = ran.number("carbon.heats.0.minutesToEven90");
    double whole = hold.number("minutesToEven90");
    assertTrue(left < whole, left + " " + whole);
    assertTrue(left > whole - 3 * 10, "three heats of five minutes, each with a rise of five");
  }

  @Test
  void aLayerThickerThanTheLastTakesLonger() {
    double thin = evening("1mm");
    double thick = evening("3mm");
    assertTrue(thick > 6 * thin, thin + " " + thick);
  }

  private static double evening(String layer) {
    return Ran.run("pair", "1095", "1018", "--layer", layer, "--json")
        .number("carbon.heats.2.minutesToEven90");
  }

  @Test
  void sharesAndLayersAreTaken() {
    Ran share = Ran.run("pair", "1084", "75Ni8", "--layer", "3mm", "--share", "60:40", "--json");
    assertEquals(60, share.number("how.firstSharePct"), 1e-6);
    assertEquals(2, share.number("how.secondLayerMm"), 1e-6);
    Ran layers = Ran.run("pair", "1084", "75Ni8", "--layer", "3mm,1mm", "--json");
    assertEquals(75, layers.number("how.firstSharePct"), 1e-6);
    Ran usual = Ran.run("pair", "Ni200", "1084", "--json");
    assertEquals(0.18, usual.number("how.firstLayerMm"), 1e-6);
  }

  @Test
  void aThickerSectionAsksForAFasterQuench() {
    assertTrue(quench("80CrV2", "6mm") > quench("80CrV2", "2mm"));
    assertTrue(quench("W1", "12mm") > quench("W1", "3mm"));
    assertEquals(quench("1084", "12mm"), quench("1084", "4mm"), "its sheet has no water");
  }

  private static double quench(String steel, String section) {
    Ran ran = Ran.run("pair", steel, "75Ni8", "--section", section, "--json");
    int at = 0;
    while (!ran.text("checks." + at + ".name").equals("quench")) {
      at++;
    }
    return ran.number("checks." + at + ".first");
  }

  @Test
  void anAnalysisGoesWhereAGradeGoes() {
    Ran ran = Ran.run("pair", "C0.79 Mn0.48 Si0.25", "75Ni8", "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("fits", ran.text("rating"));
    assertTrue(ran.out().contains("keeps to the limits of 1075"), ran.out());
  }

  @Test
  void aMeltOutsideItsGradeIsPointedOut() {
    Ran ran = Ran.run("pair", "1084: C0.98 Mn0.70", "75Ni8: Ni1.2");
    assertEquals(0, ran.code(), ran.err());
    String said = ran.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("C 0.98 % is outside what SAE 1084 allows, at most 0.93 %"), said);
    assertTrue(said.contains("Ni 1.2 % is outside what 75Ni8 allows, at least 1.8 %"), said);
    assertFalse(said.contains("Mn 0.7 % is"), said);
    assertEquals("", ran.err());
    assertFalse(Ran.run("pair", "1084: C0.88 Mn0.70", "75Ni8").out().contains("Remarks"));
  }

  @ParameterizedTest
  @CsvSource({
    "scrap, 1084, unknown-stock",
    "1084, mystery leaf spring, unknown-stock",
    "galvanized sheet, 1084, plated-stock",
    "1084, chromed scrap, plated-stock"
  })
  void stockWithoutAnAnalysisClashes(String first, String second, String check) {
    Ran ran = Ran.run("pair", first, second, "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("clash", ran.text("rating"));
    assertEquals(check, ran.text("checks.0.name"));
  }

  @Test
  void limitsCanBeSetByTheUser() throws IOException {
    String text = Files.readString(Path.of("alloy-data/pair-limits.csv"));
    Files.writeString(
        folder.resolve("pair-limits.csv"),
        text.replace("D,above,2.25,12", "D,above,4,12").replace("A,above,1,", "A,above,2,"));
    Ran own = Ran.run("pair", "O1", "1084", "--json", "--data", folder.toString());
    assertEquals("fits", own.text("rating"), own.out());
  }

  @Test
  void theUsersOwnSteelsAreCheckedOnLoad() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("alloy-data/steels.csv"));
    Path own = folder.resolve("steels.csv");
    String mine = lines.get(13).replace("1084", "MINE").replace("G10840", "").replace("1.1269", "");
    Files.writeString(own, lines.get(0) + "\n" + mine + "\n");
    Files.writeString(
        folder.resolve("steel-pairs.csv"),
        "first,second,first_mm,second_mm,note,standing,source\n");
    Ran good = Ran.run("pair", "MINE", "C0.75 Ni2", "--json", "--data", folder.toString());
    assertEquals(0, good.code(), good.err());
    Files.writeString(own, lines.get(0) + "\n" + mine.replace(",0.865,", ",0.99,") + "\n");
    Ran bad = Ran.run("pair", "MINE", "C0.75 Ni2", "--data", folder.toString());
    assertEquals(3, bad.code(), bad.out());
    assertTrue(bad.err().contains("steels.csv, line 2:"), bad.err());
    assertTrue(bad.err().contains("C_typ_pct 0.99 is above C_max_pct 0.93"), bad.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"pairs", "pairs 1084 75Ni8 O1 304", "pairs --all"})
  void listsFitATerminal(String line) {
    Ran ran = Ran.run(line.split(" "));
    assertEquals(0, ran.code(), ran.err());
    ran.out().lines().forEach(l -> assertTrue(l.length() <= 80, l));
  }

  @Test
  void allPairsAreThere() {
    Ran ran = Ran.run("pairs", "--all", "--csv");
    List<String> lines = ran.out().lines().toList();
    assertEquals("first,second,rating,check,title,practice,standing", lines.get(0));
    assertEquals(1 + 1953, lines.size());
    Set<String> pairs = new HashSet<>();
    lines.stream()
        .skip(1)
        .forEach(l -> pairs.add(String.join(",", List.of(l.split(",")).subList(0, 2))));
    assertEquals(1953, pairs.size());
    assertTrue(
        Stream.of("fits", "watch", "clash").allMatch(r -> ran.out().contains("," + r + ",")));
  }

  @Test
  void pairAndPairsAgree() {
    Ran all = Ran.run("pairs", "--json");
    for (int i = 0; i < all.list("pairs").size(); i++) {
      String at = "pairs." + i + ".";
      Ran one = Ran.run("pair", all.text(at + "first"), all.text(at + "second"), "--json");
      assertEquals(all.text(at + "rating"), one.text("rating"), all.text(at + "first"));
      if (!one.text("rating").equals("fits")) {
        assertEquals(all.text(at + "check"), one.text("checks.0.name"));
      }
    }
  }

  @Test
  void theChartIsWritten() throws IOException {
    Path out = folder.resolve("charts");
    Ran ran = Ran.run("pairs", "1084", "75Ni8", "304", "--out", out.toString(), "--png");
    assertEquals(0, ran.code(), ran.err());
    String svg = Files.readString(out.resolve("pairs.svg"));
    assertTrue(svg.contains("75Ni8") && svg.contains("chromium oxide"), svg);
    assertTrue(Files.size(out.resolve("pairs.png")) > 1000);
    assertTrue(ran.out().contains("pairs.svg"), ran.out());
  }

  @Test
  void whatAnotherHandHasPutThereIsNotWrittenOver() throws IOException {
    Path mine = folder.resolve("pairs.svg");
    Files.writeString(mine, "mine");
    Ran refused = Ran.run("pairs", "1084", "75Ni8", "--out", folder.toString());
    assertEquals(3, refused.code());
    assertTrue(
        refused.err().contains(mine + ": it was not written by this program"), refused.err());
    assertEquals("mine", Files.readString(mine));
    assertEquals(
        0, Ran.run("pairs", "1084", "75Ni8", "--out", folder.toString(), "--replace").code());
    assertTrue(Files.size(mine) > 1000);
  }

  /** Practice, tempering and standings are found by the grade, the answer goes by the name. */
  @Test
  void aSteelGoesByTheNameThatWasWritten() {
    Ran grade = Ran.run("pair", "1084", "75Ni8", "--full");
    Ran alias = Ran.run("pair", "1084", "15n20", "--full");
    assertEquals(0, alias.code());
    assertEquals(
        grade.out().replace("75Ni8", "15N20").replaceAll("\\s+", " "),
        alias.out().replaceAll("\\s+", " "));
    // a grade without a hardening range is one of the table by any of its names
    Ran mild = Ran.run("pair", "1084", "1008", "--full");
    Ran number = Ran.run("pair", "1084", "g10080", "--full");
    assertEquals(
        mild.out().replaceAll("\\b1008\\b", "G10080").replaceAll("\\s+", " "),
        number.out().replaceAll("\\s+", " "));
    assertEquals(
        Ran.run("pairs", "75Ni8", "1084", "--csv").out(),
        Ran.run("pairs", "75Ni8", "15N20", "1084", "--csv").out());
    assertTrue(Ran.run("pair", "75Ni8", "15N20").out().startsWith("75Ni8 with 75Ni8: fits."));
  }
}
