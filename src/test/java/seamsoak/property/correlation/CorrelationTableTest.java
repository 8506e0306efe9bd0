package seamsoak.property.correlation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.property.Correlations;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;

class CorrelationTableTest {
  private static final String HEADER = "correlation,term,coefficient,unit,source,standing,note\n";

  @TempDir Path folder;

  @Test
  void everyCoefficientNamesAKnownSourceAStandingAndAUnit() {
    SourceTable sources = SourceTable.load(DataFolder.packed());
    List<CsvTable.Row> rows =
        Stream.of("correlations.csv", "activity-parameters.csv")
            .flatMap(file -> DataFolder.packed().csv(file).rows().stream())
            .toList();
    for (CsvTable.Row row : rows) {
      String place = row.place().toString();
      assertTrue(
          sources.find(row.text("source")).isPresent(), () -> place + ": " + row.text("source"));
      SourceTable.standing(row);
      assertFalse(row.text("unit").isEmpty(), place);
    }
  }

  @Test
  void aMissingTermIsAFaultThatNamesIt() throws IOException {
    Coefficients k =
        table("grange1961-ae1,constant,1333,F,grange1961,seen,\n").of("grange1961-ae1");
    Fault fault = assertThrows(Fault.class, () -> k.get("Mn"));
    assertTrue(fault.getMessage().contains("Mn"), fault.getMessage());
    assertEquals(1333, k.get("constant"));
  }

  @Test
  void aDoubledTermIsAFault() throws IOException {
    CoefficientTable table =
        table("a,Mn,1,C/wt%,andrews1965,seen,\na,Mn,2,C/wt%,andrews1965,seen,\n");
    assertThrows(Fault.class, () -> table.of("a"));
  }

  @Test
  void anUnknownCorrelationIsAFault() throws IOException {
    CoefficientTable table = table("a,Mn,1,C/wt%,andrews1965,seen,\n");
    assertThrows(Fault.class, () -> table.of("b"));
  }

  @Test
  void rowsOfUnlikeStandingMakeItPartlySeen() {
    Correlations k = Correlations.load(DataFolder.packed());
    assertEquals(Standing.PARTLY, k.critical().a3Alloy().correlation().standing());
    assertEquals(Standing.MEMORY, k.critical().accmAlloy().correlation().standing());
    assertEquals(Standing.SEEN, k.critical().ms().correlation().standing());
  }

  /** Sources once each in order, terms by standing, each note with the terms it is about. */
  @Test
  void saysWhereEachTermComesFrom() throws IOException {
    CoefficientTable table =
        table(
            "a,Mn,1,C/wt%,andrews1965,seen,from a plot\n"
                + "a,Si,2,C/wt%,eldis1982,from memory,\n"
                + "a,Cr,3,C/wt%,andrews1965,seen,from a plot\n"
                + "b,Mn,3,C/wt%,andrews1965,seen,\n");
    assertEquals(Set.of("a", "b"), table.names());
    Correlation c = table.of("a").describe("something", "C", List.of(), "none");
    assertEquals("andrews1965, eldis1982", c.sourceKey());
    assertEquals(Standing.PARTLY, c.standing());
    assertEquals(List.of("Mn", "Cr"), c.terms().get(Standing.SEEN));
    assertEquals(List.of("Si"), c.terms().get(Standing.MEMORY));
    assertEquals(List.of("Mn, Cr: from a plot"), c.notes());
  }

  private CoefficientTable table(String rows) throws IOException {
    Files.writeString(folder.resolve("correlations.csv"), HEADER + rows);
    return CoefficientTable.load(DataFolder.over(folder));
  }
}
