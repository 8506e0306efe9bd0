package seamsoak.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.SourceTable;
import seamsoak.steel.SteelTable;

/** The table of pairings and that of limits. */
class PairTablesTest {
  private static final DataFolder PACKED = DataFolder.packed();

  @TempDir private Path folder;

  @Test
  void thePairingsAreManyAndEachSaysWhatItKnowsAndHowWell() {
    PairTable table = PairTable.load(PACKED, SteelTable.load(PACKED));
    SourceTable sources = SourceTable.load(PACKED);
    assertTrue(table.pairs().size() >= 24);
    for (Practice p : table.pairs()) {
      assertFalse(p.note().isBlank(), p.toString());
      assertTrue(sources.find(p.source()).isPresent(), p.toString());
    }
  }

  /** Whoever brings few steels of their own need not bring pairs too. */
  @Test
  void packedPairsOfSteelsThatAreNotThereAreLeftOut() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("alloy-data/steels.csv"));
    Files.write(
        folder.resolve("steels.csv"),
        lines.stream().filter(l -> l.matches("(id|1084|75Ni8),.*")).toList());
    DataFolder own = DataFolder.over(folder);
    PairTable table = PairTable.load(own, SteelTable.load(own));
    assertEquals(1, table.pairs().size());
    assertTrue(table.of("75Ni8", "1084").isPresent());
  }

  @Test
  void aPairIsFoundInEitherOrderWithItsLayers() {
    PairTable table = PairTable.load(PACKED, SteelTable.load(PACKED));
    Practice foil = table.of("Ni200", "1084").orElseThrow();
    assertEquals("Ni200", foil.first());
    assertEquals(0.18, foil.firstMm());
    assertTrue(table.of("1084", "1084").isEmpty());
  }

  @Test
  void everyLimitNamesAKnownSource() {
    SourceTable sources = SourceTable.load(PACKED);
    PairLimits.load(PACKED)
        .all()
        .forEach(l -> assertTrue(sources.find(l.source()).isPresent(), l.toString()));
  }

  @Test
  void aLimitWarnsBeyondItNotAtIt() {
    PairLimit above = PairLimits.load(PACKED).of(CheckName.MS);
    assertEquals(Rating.FITS, above.rate(above.watch().orElseThrow()));
    assertEquals(Rating.WATCH, above.rate(above.watch().orElseThrow() + 0.01));
    assertEquals(Rating.WATCH, above.rate(above.clash().orElseThrow()));
    assertEquals(Rating.CLASH, above.rate(above.clash().orElseThrow() + 0.01));
    PairLimit below = PairLimits.load(PACKED).of(CheckName.FORGING_WINDOW);
    assertEquals(Rating.FITS, below.rate(below.watch().orElseThrow()));
    assertEquals(Rating.WATCH, below.rate(below.watch().orElseThrow() - 0.01));
    assertEquals(Rating.CLASH, below.rate(below.clash().orElseThrow() - 0.01));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pair-limits.csv | ,above,2.25,12, | ,over,2.25,12, | write 'above' or 'below'",
        "pair-limits.csv | ,above,2.25,12, | ,above,2.25,2, | clash 2 comes before watch 2.25",
        "pair-limits.csv | ,D,above, | ,7,above, | '7' is no letter",
        "pair-limits.csv | ,above,2.25,12, | ,above,x,12, | 'x' in column watch is not a number",
        "pair-limits.csv | hardenability, | ms, | 'ms' stands twice",
        "steel-pairs.csv | 1084,75Ni8,3,2.3 | 1084,75Ni9,3,2.3 | there is no steel '75Ni9'",
        "steel-pairs.csv | 1084,75Ni8,3,2.3 | 1084,75Ni8,0,2.3 | '0' is no thickness",
        "steel-pairs.csv | 1080,75Ni8 | 75Ni8,1084 | stands twice",
        "steel-pairs.csv | 1084,75Ni8,3,2.3 | 1084,75Ni8,,2.3 | column first_mm is blank"
      })
  void aFaultInATableIsToldWithItsPlace(String file, String from, String to, String told)
      throws IOException {
    String text = Files.readString(Path.of("alloy-data", file));
    assertTrue(text.contains(from), from);
    Files.writeString(folder.resolve(file), text.replaceFirst(from, to));
    DataFolder own = DataFolder.over(folder);
    Fault fault =
        assertThrows(
            Fault.class,
            () -> {
              PairLimits.load(own);
              PairTable.load(own, SteelTable.load(own));
            });
    assertTrue(fault.getMessage().contains(told), fault.getMessage());
    assertTrue(fault.getMessage().matches("(?s).*" + file + ":\\d+.*"), fault.getMessage());
  }

  @Test
  void aCheckWithoutItsLimitIsAFault() throws IOException {
    CsvTable table = PACKED.csv("pair-limits.csv");
    Files.writeString(folder.resolve("pair-limits.csv"), String.join(",", table.columns()) + "\n");
    PairLimits none = PairLimits.load(DataFolder.over(folder));
    assertThrows(Fault.class, () -> none.of(CheckName.MS));
  }
}
