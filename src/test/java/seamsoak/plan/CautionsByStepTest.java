package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.source.Caution;
import seamsoak.support.Schedules;

/**
 * Every caution of the table, triggered by a billet that meets its danger and absent from one that
 * does not. A row that no billet here triggers fails, so a new row asks for a new billet.
 */
class CautionsByStepTest {
  /** Gas forge and kiln, an unknown jacket, nickel and chromium, oil of plants, cold, acid. */
  private static final String MUCH =
      """
      { "stack": { "layers": 3, "steels": ["52100", "75Ni8"], "thickness": "6 mm",
          "width": "18 mm", "length": "200 mm" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "1150 C", "for": "3 min" }] },
          { "do": "draw", "thickness": "16 mm", "width": "16 mm", "heats": [{ "at": "1120 C", "for": "2 min" }] },
          { "do": "grind", "depth": "0.3 mm" },
          { "do": "restack", "across": 2, "high": 1 },
          { "do": "weld", "heats": [{ "at": "1150 C", "for": "3 min" }], "faces": "sealed" },
          { "do": "tile", "angle": "45 deg", "slice": "14 mm",
            "jacket": { "steel": "1008", "thickness": "1 mm", "coating": "painted" } },
          { "do": "weld", "heats": [{ "at": "1150 C", "for": "3 min" }],
            "can": { "inside": "unknown" } },
          { "do": "press", "thickness": "12 mm", "heats": [{ "at": "1100 C", "for": "2 min" }] },
          { "do": "roll", "thickness": "10 mm", "heats": [{ "at": "1120 C", "for": "2 min" }] },
          { "do": "unjacket" } ],
        "blade": { "thickness": "3 mm" },
        "equipment": { "forge": "gas", "kiln": { "highest": "1000 C" },
          "shop": "closed", "descale": "acid" },
        "quenchants": [{ "kind": "canola", "at": "50 C", "flash": "315 C" }] }
      """;

  /** A bath of salt, dry ice, and a steel that hardens in air. */
  private static final String SALT =
      """
      { "stack": { "layers": 1, "steels": ["O2"], "thickness": "12 mm", "width": "30 mm",
          "length": "100 mm" },
        "steps": [
          { "do": "draw", "thickness": "10 mm", "width": "30 mm", "heats": [{ "at": "1050 C", "for": "2 min" }] } ],
        "equipment": { "cold": "dry ice" },
        "quenchants": [{ "kind": "salt", "at": "200 C" }] }
      """;

  /** A steel that hardens in air and no kiln: it is buried in vermiculite. */
  private static final String BURIED =
      """
      { "stack": { "layers": 1, "steels": ["L6"], "thickness": "12 mm", "width": "30 mm",
          "length": "100 mm" },
        "steps": [
          { "do": "draw", "thickness": "10 mm", "width": "30 mm", "heats": [{ "at": "1050 C", "for": "2 min" }] } ],
        "equipment": { "kiln": "none" } }
      """;

  /** Welded above where the handbook has its steel burn. */
  private static final String BURNING =
      """
      { "stack": { "layers": 3, "steels": ["1095", "75Ni8"], "thickness": "4 mm",
          "width": "30 mm", "length": "100 mm" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "1250 C", "for": "2 min" }] } ] }
      """;

  /** One bare bar of mild steel, an induction forge in the open, no kiln: nothing to harden. */
  private static final String LITTLE =
      """
      { "stack": { "layers": 1, "steels": ["1018"], "thickness": "12 mm", "width": "30 mm",
          "length": "100 mm" },
        "steps": [ { "do": "cool", "in": "air" } ],
        "equipment": { "forge": "induction", "kiln": "none", "shop": "open" } }
      """;

  /** Hardened in water from an induction forge, outdoors. */
  private static final String WATER =
      """
      { "stack": { "layers": 1, "steels": ["W1"], "thickness": "6 mm", "width": "30 mm",
          "length": "100 mm" },
        "steps": [ { "do": "grind", "depth": "0.2 mm" } ],
        "equipment": { "forge": "induction", "kiln": "none", "shop": "open" },
        "quenchants": [{ "kind": "water" }] }
      """;

  private static final List<Advice> ALL = new ArrayList<>();

  @BeforeAll
  static void advise() {
    Stream.of(MUCH, SALT, LITTLE, WATER, BURIED, BURNING).map(Schedules::of).forEach(ALL::add);
  }

  static Stream<CsvTable.Row> rows() {
    return DataFolder.packed().csv("cautions.csv").rows().stream();
  }

  /** The cautions of each step, of the billet's own and of its schedule. */
  private static List<List<String>> steps(Advice advice) {
    List<List<Caution>> all = new ArrayList<>();
    advice.history().forEach(s -> all.add(s.cautions()));
    advice.schedule().steps().forEach(s -> all.add(s.cautions()));
    return all.stream().map(CautionsByStepTest::statements).toList();
  }

  private static List<String> statements(List<Caution> cautions) {
    return cautions.stream().map(Caution::statement).toList();
  }

  private static boolean says(Advice advice, String statement) {
    return steps(advice).stream().anyMatch(s -> s.contains(statement));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isTriggeredByOneBilletAndAbsentFromAnother(CsvTable.Row row) {
    String statement = row.text("statement");
    String id = row.text("id");
    if (row.text("steps").equals("always")) {
      for (Advice advice : ALL) {
        assertTrue(statements(advice.cautions()).contains(statement), id);
        assertFalse(says(advice, statement), "said at the head, so not again: " + id);
      }
    } else {
      assertTrue(ALL.stream().anyMatch(a -> says(a, statement)), "no billet triggers " + id);
      if (!row.text("conditions").isEmpty()) {
        assertTrue(ALL.stream().anyMatch(a -> !says(a, statement)), "every billet triggers " + id);
      }
      assertTrue(
          ALL.stream().flatMap(a -> steps(a).stream()).anyMatch(s -> !s.contains(statement)), id);
    }
  }

  @Test
  void eachStepSaysThemWorstFirstAndOnce() {
    Map<String, Integer> gravity = new LinkedHashMap<>();
    rows().forEach(r -> gravity.put(r.text("statement"), (int) r.required("gravity")));
    int said = 0;
    for (Advice advice : ALL) {
      for (List<String> step : steps(advice)) {
        assertEquals(step.size(), Set.copyOf(step).size());
        List<Integer> order = step.stream().map(gravity::get).toList();
        assertEquals(order.stream().sorted().toList(), order);
        said += step.size();
      }
    }
    assertTrue(said > 100);
  }

  /** A danger is said where it arises and not elsewhere. */
  @Test
  void whatIsNotInTheShopIsNotWarnedOf() {
    Advice water = ALL.get(3);
    Set<String> said = new TreeSet<>();
    steps(water).forEach(said::addAll);
    for (String word :
        List.of("quench oil", "Propane", "kiln before", "molten salt", "nickel steel")) {
      assertTrue(said.stream().noneMatch(s -> s.contains(word)), word);
    }
    assertTrue(said.stream().anyMatch(s -> s.startsWith("Temper within 1 h")));
  }
}
