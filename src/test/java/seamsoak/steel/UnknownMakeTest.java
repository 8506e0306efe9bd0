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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

/** Stock that was found and not bought by its grade. */
class UnknownMakeTest {
  private final SteelTable table = SteelTable.load(DataFolder.packed());

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "leaf spring, leaf-spring",
    "Coil-Spring, leaf-spring",
    "files, old-file",
    "bandsaw blade, saw-blade",
    "saw plate, saw-blade",
    "Mild Steel, mild-steel",
    "soft steel, mild-steel"
  })
  void theWordsOfTheTradeFindIt(String words, String id) {
    Steel steel = table.find(words).orElseThrow();
    assertEquals(id, steel.key());
    assertFalse(steel.isSame(steel.make().orElseThrow().likeliest()));
  }

  @Test
  void itMayHoldWhatAnyOfItsGradesMayHold() {
    for (Steel s : table.steels()) {
      if (s.make().isEmpty()) {
        continue;
      }
      for (Steel grade : s.make().get().mayBe()) {
        for (Element e : Element.values()) {
          assertTrue(s.limits(e).hold(grade.analysis().percent(e)), s.id() + " " + grade.id());
        }
      }
      assertTrue(s.deviations().isEmpty(), s.id());
    }
    Limits carbon = table.find("leaf-spring").orElseThrow().limits(Element.C);
    assertEquals(0.47, carbon.min().orElseThrow());
    assertEquals(1.03, carbon.max().orElseThrow());
  }

  /** With an analysis it is that steel, and no grade is guessed from it. */
  @Test
  void anAnalysisSettlesIt() {
    Steel known = table.find("leaf spring: C0.6 Mn0.9 Si0.25 Cr0.8").orElseThrow();
    assertEquals(Optional.empty(), known.make());
    assertEquals(0.0, known.analysis().percent(Element.NI));
    List<Steel> grades = table.gradesOf(Composition.parse("C0.6 Mn0.9 Si0.25 Cr0.8"));
    assertTrue(grades.stream().allMatch(g -> g.make().isEmpty()), grades.toString());
  }

  @ParameterizedTest
  @CsvSource({"51600, is no steel of the table", "5160, is no quench"})
  void aWrongLineIsRefusedWithItsPlace(String grade, String says) throws IOException {
    Files.writeString(
        folder.resolve("unknown-make.csv"),
        "id,designation,aliases,may_be,quench,test,source,standing,note\n"
            + "spring,spring,,"
            + grade
            + (says.contains("quench") ? ",lard" : ",oil")
            + ",Break it.,memory,from memory,\n");
    DataFolder data = DataFolder.over(folder);
    Fault fault = assertThrows(Fault.class, () -> SteelTable.load(data));
    assertTrue(fault.getMessage().contains(says), fault.getMessage());
    assertEquals(2, fault.place().line());
  }

  @Test
  void aTestThatIsLeftOutIsAskedFor() throws IOException {
    Files.writeString(
        folder.resolve("unknown-make.csv"),
        "id,designation,aliases,may_be,quench,test,source,standing,note\n"
            + "spring,spring,,5160,oil,,memory,from memory,\n");
    DataFolder data = DataFolder.over(folder);
    Fault fault = assertThrows(Fault.class, () -> SteelTable.load(data));
    assertTrue(fault.getMessage().contains("column test is blank"), fault.getMessage());
  }

  /** A smith with a table of his own has not every grade of ours. */
  @Test
  void gradesThatAUsersTableLacksAreLeftOut() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("alloy-data/steels.csv"));
    Files.write(
        folder.resolve("steels.csv"),
        lines.stream().filter(l -> l.startsWith("id,") || l.startsWith("9260,")).toList());
    SteelTable own = SteelTable.load(DataFolder.over(folder));
    assertEquals(List.of("9260", "leaf-spring"), own.steels().stream().map(Steel::id).toList());
    assertEquals(
        "9260", own.find("leaf spring").orElseThrow().make().orElseThrow().likeliest().id());
  }
}
