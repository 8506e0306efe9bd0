package seamsoak.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.SourceTable;

class DisputeTest {
  @TempDir Path folder;

  @Test
  void everyRowSpeaksOfASteelAndASourceThatExist() {
    SteelTable table = SteelTable.load(DataFolder.packed());
    SourceTable sources = SourceTable.load(DataFolder.packed());
    int found = 0;
    for (CsvTable.Row row : DataFolder.packed().csv("disputes.csv").rows()) {
      Steel steel = table.find(row.text("steel")).orElseThrow();
      assertEquals(steel.id(), row.text("steel"));
      assertTrue(sources.find(row.text("source")).isPresent(), row.text("source"));
      assertTrue(steel.disputes().stream().anyMatch(d -> d.one().equals(row.text("one"))));
      found++;
    }
    assertEquals(11, found);
    assertEquals(
        found, table.steels().stream().mapToInt(s -> s.disputes().size()).sum(), "none is lost");
  }

  /** Two sheets each; and what two handbooks and every smith say of D2. */
  @Test
  void l6AndO1AreDisputedAndD2IsForbidden() {
    SteelTable table = SteelTable.load(DataFolder.packed());
    for (String id : new String[] {"L6", "O1"}) {
      Dispute d = table.find(id).orElseThrow().disputes().get(0);
      assertEquals("normalizing", d.matter());
      assertTrue(!d.never() && d.other().contains("normalize"), d.toString());
    }
    assertTrue(table.find("D2").orElseThrow().disputes().get(0).never());
    assertTrue(table.find("1084").orElseThrow().disputes().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L6,normalizing,maybe,a,b,memory,from memory, | unknown verdict 'maybe'",
        "L6,normalizing,never,a,b,memory,from memory, | forbidden has two sides",
        "L6,normalizing,disputed,a,,memory,from memory, | one side",
        "L6,normalizing,disputed,a,b,memory,rumor, | unknown standing"
      })
  void refusesFaultyRows(String line, String mentions) throws IOException {
    Files.writeString(
        folder.resolve("disputes.csv"),
        "steel,matter,verdict,one,other,source,standing,note\n" + line + "\n");
    DataFolder data = DataFolder.over(folder);
    Fault fault = assertThrows(Fault.class, () -> SteelTable.load(data));
    assertTrue(fault.getMessage().contains(mentions), fault.getMessage());
  }
}
