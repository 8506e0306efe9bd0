package seamsoak.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.Caution;
import seamsoak.source.Gravity;

class CautionTableTest {
  private static final CautionTable TABLE = CautionTable.load(DataFolder.packed());

  @TempDir Path folder;

  private static final Set<Condition> ALL = EnumSet.allOf(Condition.class);

  private static Set<String> words(Set<Condition> conditions) {
    return conditions.stream().map(Condition::word).collect(Collectors.toSet());
  }

  private static List<CsvTable.Row> rows() {
    return DataFolder.packed().csv("cautions.csv").rows();
  }

  private static List<String> ids(List<Caution> cautions) {
    return cautions.stream().map(Caution::id).toList();
  }

  @Test
  void showsEachRowWhereItArisesAndOnlyThere() {
    for (CsvTable.Row row : rows()) {
      String id = row.text("id");
      List<String> own = row.list("steps");
      Set<Condition> conditions = EnumSet.noneOf(Condition.class);
      ALL.stream().filter(c -> row.list("conditions").contains(c.word())).forEach(conditions::add);
      boolean always = own.equals(List.of("always"));
      assertEquals(always, ids(TABLE.general()).contains(id), id);
      for (CautionStep step : CautionStep.values()) {
        boolean arises = own.contains(step.word());
        assertEquals(arises, ids(TABLE.at(step, conditions)).contains(id), id + " at " + step);
        assertEquals(arises, ids(TABLE.at(step, ALL)).contains(id), id + " at " + step);
        for (Condition condition : conditions) {
          Set<Condition> fewer = EnumSet.allOf(Condition.class);
          fewer.remove(condition);
          assertFalse(ids(TABLE.at(step, fewer)).contains(id), id + " without " + condition);
        }
      }
      assertTrue(own.size() < CautionStep.values().length, id + " should be an 'always'");
    }
  }

  @Test
  void leavesNoStepWithoutCautionAndNoConditionWithoutUse() {
    Set<String> used =
        rows().stream().flatMap(row -> row.list("conditions").stream()).collect(Collectors.toSet());
    assertEquals(words(ALL), used);
    for (CautionStep step : CautionStep.values()) {
      assertFalse(TABLE.at(step, ALL).isEmpty(), step.word());
    }
  }

  @ParameterizedTest
  @EnumSource(CautionStep.class)
  void putsTheWorstFirstThenTheOrderOfTheTableAndEachOnce(CautionStep step) {
    List<String> inTable = rows().stream().map(row -> row.text("id")).toList();
    for (List<Caution> found : List.of(TABLE.at(step, ALL), TABLE.general())) {
      List<Caution> ordered =
          found.stream()
              .distinct()
              .sorted(
                  Comparator.comparingInt((Caution c) -> c.gravity().number())
                      .thenComparingInt(c -> inTable.indexOf(c.id())))
              .toList();
      assertEquals(ordered, found);
    }
  }

  @Test
  void sortsByGravityWhateverTheOrderOfTheTable() throws IOException {
    CautionTable table =
        CautionTable.load(
            tableOf(
                """
                mild,3,Third.,weld,,memory,from memory,
                bad,2,Second.,weld;draw,,memory,from memory,
                fatal,1,First.,weld,hot,memory,from memory,
                worse,2,Also second.,weld,,memory,from memory,
                all,2,Anywhere.,always,,memory,from memory,
                """));
    assertEquals(
        List.of("fatal", "bad", "worse", "mild"),
        ids(table.at(CautionStep.WELD, Set.of(Condition.HOT))));
    assertEquals(List.of("bad", "worse", "mild"), ids(table.at(CautionStep.WELD, Set.of())));
    assertEquals(List.of("bad"), ids(table.at(CautionStep.DRAW, Set.of(Condition.HOT))));
    assertEquals(List.of("all"), ids(table.general()));
    assertEquals(Gravity.KILLS, table.at(CautionStep.WELD, Set.of(Condition.HOT)).get(0).gravity());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,4,S.,weld,,k,seen,| :2:3: no such gravity",
        "a,1.5,S.,weld,,k,seen,| :2:3: no such gravity",
        "a,,S.,weld,,k,seen,| :2:3: column gravity is blank",
        "a,1,,weld,,k,seen,| :2:5: the statement is blank",
        "a,1,S.,,,k,seen,| :2:8: the steps are blank",
        "a,1,S.,weld;forge,,k,seen,| :2:8: unknown word 'forge' in column steps",
        "a,1,S.,weld,heat,k,seen,| :2:13: unknown word 'heat' in column conditions",
        "a,1,S.,always;weld,,k,seen,| :2:8: 'always' stands beside other steps",
        "a,1,S.,always,hot,k,seen,| :2:8: 'always' stands beside other steps",
        "a,1,S.,weld,,,seen,| :2:14: the source is blank",
        "a,1,S.,weld,,k,rumor,| :2:16: unknown standing 'rumor'",
        "a,1,S.,weld,,k,seen,/a,1,S.,weld,,k,seen,| :3:1: caution 'a' stands twice"
      })
  void refusesFaultyRows(String lines, String message) throws IOException {
    DataFolder data = tableOf(lines.replace("/", "\n"));
    Fault fault = assertThrows(Fault.class, () -> CautionTable.load(data));
    assertTrue(fault.getMessage().contains(message), fault.getMessage());
  }

  private DataFolder tableOf(String lines) throws IOException {
    Files.writeString(
        folder.resolve("cautions.csv"),
        "id,gravity,statement,steps,conditions,source,standing,note\n" + lines);
    return DataFolder.over(folder);
  }
}
