package seamsoak.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.steel.SheetQuench.Medium;

/** What the sheets of grades quench them in, and what of springs is no blade's temper. */
class SheetQuenchTest {
  @TempDir private Path folder;

  /** Most usual first; what is said of such a section before what is said of all. */
  @ParameterizedTest
  @CsvSource({
    "oil, 5, OIL",
    "fast oil or water, 5, FAST_OIL WATER",
    "water or brine; oil when thin, 5, OIL WATER BRINE",
    "water or brine; oil when thin, 25, WATER BRINE",
    "brine or water; fast oil below 5 mm, 4.9, FAST_OIL BRINE WATER",
    "brine or water; fast oil below 5 mm, 5, BRINE WATER",
    "fast oil; brine when thick, 5, FAST_OIL",
    "fast oil; brine when thick, 6.35, BRINE FAST_OIL",
    "oil below 8 mm; water from 8 mm, 7.9, OIL",
    "oil below 8 mm; water from 8 mm, 8, WATER",
    "does not harden to any use, 5, ''"
  })
  void mediaOfASection(String words, double mm, String media) {
    List<String> found =
        SheetQuench.parse(words).orElseThrow().media(mm / 1e3).stream().map(Medium::name).toList();
    assertEquals(media, String.join(" ", found));
  }

  @ParameterizedTest
  @CsvSource({"lard", "oil and water", "oil below 8", "oil below 1.2.3 mm", "''"})
  void otherWordsAreNone(String words) {
    assertEquals(Optional.empty(), SheetQuench.parse(words));
  }

  /** Each grade that hardens says in what, and no other does. */
  @Test
  void everyGradeThatHardensSaysInWhat() {
    for (Steel s : SteelTable.load(DataFolder.packed()).steels()) {
      boolean hardens = s.heatTreatment().harden().isPresent();
      SheetQuench quench = s.heatTreatment().quench().orElseThrow();
      assertEquals(hardens, !quench.choices().isEmpty(), s.id());
      assertEquals(hardens, !quench.media(5e-3).isEmpty(), s.id());
    }
  }

  @Test
  void anUnknownQuenchIsRefusedWithItsPlace() throws IOException {
    Files.writeString(
        folder.resolve("steels.csv"),
        Files.readString(Path.of("alloy-data/steels.csv")).replace(",fast oil,", ",lard,"));
    DataFolder data = DataFolder.over(folder);
    Fault fault = assertThrows(Fault.class, () -> SteelTable.load(data));
    assertTrue(fault.getMessage().contains("'lard' is no quench"), fault.getMessage());
  }

  /** The sheet's own range stays beside that of a blade. */
  @Test
  void springGradesHaveTwoTempers() {
    SteelTable table = SteelTable.load(DataFolder.packed());
    List<String> two =
        table.steels().stream()
            .filter(s -> s.heatTreatment().sheetTemper().isPresent())
            .map(Steel::id)
            .toList();
    assertEquals(List.of("C67S", "SK85", "55Cr3", "9260", "56Si7"), two);
    HeatTreatment h = table.find("55Cr3").orElseThrow().heatTreatment();
    assertEquals(new TemperatureRange(150, 315), h.temper().orElseThrow());
    assertEquals(new TemperatureRange(430, 500), h.sheetTemper().orElseThrow());
    assertEquals(Optional.of(200.0), h.temperNear(200));
    assertEquals(Optional.of(315.0), h.temperNear(340));
    assertEquals(Optional.of(430.0), h.temperNear(400));
    assertEquals(Optional.of(500.0), h.temperNear(600));
  }

  @ParameterizedTest
  @CsvSource({"'55Cr3,315,150', is above", "'55Cr3,150,315\n55Cr3,150,315', stands twice"})
  void aRangeIsOneLineInOrder(String lines, String says) throws IOException {
    Files.writeString(
        folder.resolve("blade-tempers.csv"), "steel,temper_min_C,temper_max_C\n" + lines + "\n");
    DataFolder data = DataFolder.over(folder);
    Fault fault = assertThrows(Fault.class, () -> SteelTable.load(data));
    assertTrue(fault.getMessage().contains(says), fault.getMessage());
  }
}
