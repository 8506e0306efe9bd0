package seamsoak.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.Standing;

class SteelTableTest {
  private static SteelTable table;

  @TempDir Path folder;

  @BeforeAll
  static void load() {
    table = SteelTable.load(DataFolder.packed());
  }

  @ParameterizedTest
  @CsvSource({
    "1084, 1084",
    "SAE 1084, 1084",
    "AISI-1084, 1084",
    "sae/aisi 1084, 1084",
    "g10840, 1084",
    "UNS G10840, 1084",
    "15N20, 75Ni8",
    "15n-20, 75Ni8",
    "75 ni 8, 75Ni8",
    "1.5634, 75Ni8",
    "DIN 1.5634, 75Ni8",
    "o-1, O1",
    "AISI O1, O1",
    "gauge plate, O1",
    "1.2510, 95MnWCr5",
    "SUJ2, 52100",
    "100cr6, 100Cr6",
    "ck75, C75S",
    "C45, 1045",
    "C60, 1060",
    "St 37-2, S235JR",
    "ASTM A203 Grade E, A203E",
    "nickel 200, Ni200",
    "sk-5, SK85"
  })
  void findsByIdDesignationAliasAndNumber(String name, String id) {
    assertEquals(id, table.find(name).orElseThrow().grade());
  }

  /** As the table spells it; a grade's own name wins over its number with a body before it. */
  @ParameterizedTest
  @CsvSource({"15n20, 15N20", "75ni8, 75Ni8", "din 1.5634, 1.5634", "SAE 1084, 1084"})
  void goesByTheNameThatWasWritten(String name, String called) {
    assertEquals(called, table.find(name).orElseThrow().id());
  }

  @Test
  void isTheSameMetalByAnyName() {
    Steel grade = table.find("75Ni8").orElseThrow();
    assertTrue(grade.isSame(table.find("15N20").orElseThrow()));
    assertFalse(grade.isSame(table.find("75Ni8: C0.76").orElseThrow()));
    assertFalse(grade.isSame(table.find("1084").orElseThrow()));
    assertEquals("15N20 (C0.76)", table.find("15N20: C0.76").orElseThrow().id());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "C85S",
        "1.1269",
        "1.2823",
        "25CrMo4",
        "near 1.1231",
        "1.2713",
        "A203",
        "SAE",
        "",
        " ",
        "C67",
        "W108"
      })
  void doesNotFindNearGradesOrParts(String name) {
    assertEquals(Optional.empty(), table.find(name));
  }

  @Test
  void findsWrittenAnalysis() {
    Steel steel = table.find(" C0.84 Mn0.75 Si0.22 ").orElseThrow();
    assertEquals("C0.84 Mn0.75 Si0.22", steel.id());
    assertEquals(0.84, steel.analysis().carbon());
    assertEquals(0.75, steel.analysis().percent(Element.MN));
    assertEquals(Limits.NONE, steel.limits(Element.C));
    assertEquals(HeatTreatment.NONE, steel.heatTreatment());
    assertEquals(OptionalDouble.empty(), steel.ac1C());
    assertEquals(1.0, table.find("C1 Mn0.4").orElseThrow().analysis().carbon());
    assertEquals(0.5, table.find("c.5").orElseThrow().analysis().carbon());
    assertEquals(2, table.find("Ni 2 %").orElseThrow().analysis().percent(Element.NI));
  }

  @Test
  void saysWhatIsWrongWithAWrittenAnalysis() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> table.find("C0.84 Mg0.75"));
    assertTrue(e.getMessage().contains("names 'Mg'"), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "1048, 1045",
    "15N2O, 15N20",
    "80CrV, 80CrV2",
    "01, O1",
    "C67, C67S",
    "52l00, 52100",
    "gage plate, gauge plate",
    "silversteel, silver steel"
  })
  void suggestsTheNearestName(String name, String meant) {
    assertEquals(Optional.of(meant), table.nearest(name));
  }

  @Test
  void suggestsNothingFarAway() {
    assertEquals(Optional.empty(), table.nearest("unobtainium"));
  }

  @Test
  void readsWhatThePrintedTableSaysOf1095() {
    Steel s = table.find("1095").orElseThrow();
    assertEquals("SAE 1095", s.designation());
    assertEquals("plain carbon", s.category());
    assertEquals(List.of("G10950"), s.aliases());
    assertEquals(List.of("sae-j403", "astm-a29", "astm-a576"), s.standards());
    assertEquals(List.of("1.1274 (C100S)"), s.near());
    assertEquals(new Limits(OptionalDouble.of(0.9), OptionalDouble.of(1.03)), s.limits(Element.C));
    assertEquals(new Limits(OptionalDouble.empty(), OptionalDouble.of(0.04)), s.limits(Element.P));
    assertEquals(Limits.NONE, s.limits(Element.AL));
    HeatTreatment h = s.heatTreatment();
    assertEquals(OptionalDouble.of(1150), h.forgeStartC());
    assertEquals(OptionalDouble.of(815), h.forgeStopC());
    assertEquals(Optional.of(new TemperatureRange(855, 900)), h.normalize());
    assertEquals(Optional.of(new TemperatureRange(790, 800)), h.anneal());
    assertEquals(OptionalDouble.of(28), h.annealRateCPerHour());
    assertEquals(Optional.of(new TemperatureRange(775, 800)), h.harden());
    assertEquals(OptionalDouble.empty(), h.leastSoakMinutes());
    assertEquals(Optional.of(new TemperatureRange(150, 260)), h.temper());
    assertEquals(OptionalDouble.of(730), s.ac1C());
    assertEquals(OptionalDouble.of(800), s.ac3OrAccmC());
    assertEquals(OptionalDouble.of(210), s.msC());
    assertEquals(OptionalDouble.of(11.4), s.cteMicroPerKelvin());
    assertEquals(Optional.of(Hardenability.VERY_SHALLOW), s.hardenability());
  }

  @Test
  void residualElementsAreNone() {
    assertEquals(0, table.find("C75S").orElseThrow().analysis().percent(Element.CR));
    assertEquals(OptionalDouble.of(0.4), table.find("C75S").orElseThrow().limits(Element.CR).max());
  }

  @Test
  void tellsWhereAFigureComesFrom() {
    assertEquals(
        Optional.of(new Provenance(Standing.SEEN, false, "standard-copy")),
        table.standing("1095", "C_min_pct"));
    assertEquals(
        Optional.of(new Provenance(Standing.COMPUTED, false, "limits-midpoint")),
        table.standing("1095", "C_typ_pct"));
    assertEquals(
        Optional.of(new Provenance(Standing.MEMORY, true, "memory")),
        table.standing("75Ni8", "Ac1_C"));
    assertEquals(Optional.empty(), table.standing("1095", "Ni_typ_pct"));
    assertEquals(Optional.empty(), table.standing("nothing", "C_typ_pct"));
  }

  private SteelTable edited(String find, String replacement) throws IOException {
    String text = Files.readString(Path.of("alloy-data/steels.csv"));
    assertTrue(text.contains(find), find);
    Files.writeString(
        folder.resolve("steels.csv"),
        text.replaceFirst(Pattern.quote(find), Matcher.quoteReplacement(replacement)));
    return SteelTable.load(DataFolder.over(folder));
  }

  @Test
  void standingDoesNotVouchForAChangedFigure() throws IOException {
    SteelTable own = edited(",0.9,0.965,1.03,", ",0.9,0.95,1.03,");
    assertEquals(0.95, own.find("1095").orElseThrow().analysis().carbon());
    assertEquals(Optional.empty(), own.standing("1095", "C_typ_pct"));
    assertTrue(own.standing("1095", "C_max_pct").isPresent());
  }

  @Test
  void readsATableOfOnesOwnWithFewerSteels() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("alloy-data/steels.csv"));
    Files.write(folder.resolve("steels.csv"), List.of(lines.get(0), lines.get(1)));
    SteelTable own = SteelTable.load(DataFolder.over(folder));
    assertEquals(List.of("1008"), own.grades().stream().map(Steel::id).toList());
    assertTrue(own.standing("1008", "C_typ_pct").isPresent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1010,SAE 1010 | 1008,SAE 1010 | :3:1: '1008' already names 1008",
        "Ck101 | Ck75 | :17:13: 'Ck75' already names C75S",
        "0.9,0.965,1.03 | 0.99,0.965,1.03 | C_min_pct 0.99 is above C_typ_pct 0.965",
        "0.9,0.965,1.03 | 0.9,1.065,1.03 | C_typ_pct 1.065 is above C_max_pct 1.03",
        "0.9,0.965,1.03 | 0.9,,1.03 | C_typ_pct is blank beside a lower limit",
        "0,0.06,0.1 | 0,,0.1 | :2:124: column C_typ_pct is blank",
        "1150,815,855,900 | 815,1150,855,900 | forge_stop_C 1150 is above forge_start_C 815",
        "1150,815,855,900 | 1150,815,955,900 | normalize_min_C 955 is above normalize_max_C 900",
        "1150,815,855,900 | 1150,815,,900 | normalize_min_C is blank; a range has both ends",
        "775,800,,brine | 875,800,,brine | harden_min_C 875 is above harden_max_C 800",
        "730,800,210,11.4 | 830,800,210,11.4 | Ac1_C 830 is above Ac3_or_Accm_C 800",
        "730,800,210,11.4 | 730,800,2l0,11.4 | '2l0' in column Ms_C is not a number",
        "edge; dark layer,very shallow | edge; dark layer,skin deep | unknown hardenability",
        "0.08,0.105,0.13 | 0.08,99.9,100 | is more than cementite holds",
        "1095,SAE 1095 | ,SAE 1095 | :16:1: column id is blank"
      })
  void refusesFaultyTables(String find, String replacement, String message) {
    Fault fault =
        assertThrows(Fault.class, () -> edited(find, replacement == null ? "" : replacement));
    assertTrue(fault.getMessage().contains(message), fault.getMessage());
    assertTrue(fault.place().line() >= 2 && fault.place().column() >= 1, fault.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1008,C_typ_pct,0.06,from memory,,memory | :3:6: C_typ_pct of 1008 stands twice",
        "1008,C_mean_pct,0.06,from memory,,memory | :3:6: steels.csv has no column 'C_mean_pct'",
        "1010,C_typ_pct,0.105,heard,,memory | :3:22: unknown standing 'heard'",
        "1010,C_typ_pct,0.105,computed,poor,memory | :3:31: unknown confidence 'poor'"
      })
  void refusesFaultyStandings(String line, String message) throws IOException {
    Files.writeString(
        folder.resolve("steels-standing.csv"),
        "id,column,value,standing,confidence,source\n"
            + "1008,C_typ_pct,0.06,from memory,,memory\n"
            + line);
    SteelTable table = SteelTable.load(DataFolder.over(folder));
    Fault fault = assertThrows(Fault.class, () -> table.standing("1008", "C_typ_pct"));
    assertTrue(fault.getMessage().contains(message), fault.getMessage());
  }
}
