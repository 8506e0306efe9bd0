package seamsoak.page.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.billet.file.FormBook;
import seamsoak.data.DataFolder;
import seamsoak.data.JsonPath;
import seamsoak.support.Walks;

/** A billet's text, changed by fields and buttons. */
public class EditingTest {
  private static final String TEXT =
      """
      { "units": "us", // bare numbers
        "stack": { "layers": 3, "steels": ["1018", "1095"], "thickness": "1/4", "width": 1.5, "length": 6 },
        "steps": [
          // the first weld
          { "do": "weld", "heats": [{ "at": 2200, "for": 5, "times": 3, "done": [{}] }] },
          { "do": "draw", "thickness": 1, "width": 1, "heats": [{ "at": 2050, "for": 3 }] },
          { "do": "restack", "across": 2, "high": 2, "turn": "all" },
          { "do": "weld", "heats": [{ "at": 2200, "for": 5 }], "seen": { "where": "restack 3", "line": "none" } }
        ]
      }
      """;

  private final FormBook book = new FormBook(Walks.NAMES, DataFolder.packed());

  private Editing billet() {
    return Editing.of(TEXT, book);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "steps[0].heats[0].at | 2150   | \"at\": 2150,",
        "steps[0].heats[0].at | 1180 C | \"at\": \"1180 C\",",
        "steps[0].heats[0].at | 1180C  | \"at\": \"1180 C\",",
        "steps[1].thickness   | 7/8    | \"thickness\": \"7/8\", \"width\": 1,",
        "stack.steels[0]      | 1084   | [\"1084\", \"1095\"]",
        "stack.thickness[1]   | 3/16   | \"thickness\": [\"1/4\", \"3/16\"]",
        "steps[0].heats[0].rise | 4    | \"rise\": 4 }",
        "steps[0].can.vent    | hole   | \"can\": { \"vent\": \"hole\" } }",
        "name                 | 12     | \"name\": \"12\"",
        "blade.hardness       | 60     | \"blade\": { \"hardness\": 60 }",
        "equipment.kiln       | none   | \"equipment\": { \"kiln\": \"none\" }",
        "equipment.kiln.highest | 2000 | \"equipment\": { \"kiln\": { \"highest\": 2000 } }",
      })
  void fieldsAreWrittenAsTheFileHasThem(String field, String value, String expected) {
    String text = billet().set(field, value).text();
    assertTrue(text.contains(expected), text);
    assertTrue(text.contains("// bare numbers") && text.contains("// the first weld"), text);
    assertEquals(
        value.replace("1180C", "1180 C"), Editing.of(text, book).value(JsonPath.of(field)));
  }

  @Test
  void whatIsBlankIsLeftOutWithWhatHeldIt() {
    Editing with = billet().set("steps[0].can.vent", "hole").set("blade.hardness", "60");
    assertEquals(TEXT, with.set("steps[0].can.vent", " ").set("blade.hardness", "").text());
    assertTrue(billet().set("steps[2].turn", "").text().contains("\"high\": 2 }"));
    assertEquals("", billet().set("stack.steels[1]", "").value(JsonPath.of("stack.steels[1]")));
  }

  @Test
  void aWordGivesWayToLimits() {
    Editing none = billet().set("equipment.kiln", "none");
    String text = none.set("equipment.kiln.highest", "2000").text();
    assertTrue(text.contains("\"kiln\": { \"highest\": 2000 }"), text);
  }

  @Test
  void whatIsTheSameChangesNothing() {
    assertEquals(TEXT, billet().set("steps[0].heats[0].at", " 2200 ").text());
    assertEquals(TEXT, billet().set("stack.thickness[1]", "1/4").text());
    assertEquals(TEXT, billet().set("blade.hardness", "").text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".",
        "steps",
        "steps[0]",
        "steps[0].heats",
        "steps[9].at",
        "steps[0].nonsense",
        "stack.steels[7]",
        "curves.x",
        "steps[0].done",
        "rev",
        "a[b",
        "steps[0].heats[0].at.x"
      })
  void otherPathsAreNoFields(String path) {
    assertThrows(IllegalArgumentException.class, () -> billet().set(path, "1"));
    assertThrows(IllegalArgumentException.class, () -> billet().set("name", "x".repeat(501)));
  }

  @Test
  void stepsMoveAndWhatWasSeenGoesOnNamingTheSameSeams() {
    Editing added = new Acts(billet()).done("step grind 1");
    assertEquals("grind", added.value(JsonPath.of("steps[1].do")));
    assertEquals("restack 4", added.value(JsonPath.of("steps[4].seen.where")));
    Editing earlier = new Acts(billet()).done("earlier steps[2]");
    assertEquals("restack", earlier.value(JsonPath.of("steps[1].do")));
    assertEquals("restack 2", earlier.value(JsonPath.of("steps[3].seen.where")));
    Editing out = new Acts(billet()).done("out steps[0]");
    assertEquals("restack 2", out.value(JsonPath.of("steps[2].seen.where")));
    Editing gone = new Acts(billet()).done("out steps[2]");
    assertEquals("restack 0", gone.value(JsonPath.of("steps[2].seen.where")), "told as a fault");
  }

  @Test
  void aCopyIsPlannedAndNotDone() {
    Editing copy = new Acts(billet()).done("copy steps[0]");
    assertEquals("2200", copy.value(JsonPath.of("steps[1].heats[0].at")));
    assertEquals(1, copy.size(JsonPath.of("steps[0].heats[0].done")));
    assertEquals(0, copy.size(JsonPath.of("steps[1].heats[0].done")));
    Editing seen = new Acts(billet()).done("copy steps[3]");
    assertEquals("restack 3", seen.value(JsonPath.of("steps[3].seen.where")));
    assertEquals("", seen.value(JsonPath.of("steps[4].seen.where")));
  }

  @Test
  void aNewStepIsLikeTheLastOfItsKind() {
    Editing weld = new Acts(billet()).done("step weld 4");
    assertEquals("2200", weld.value(JsonPath.of("steps[4].heats[0].at")));
    Editing press = new Acts(billet()).done("step press 4");
    assertEquals(1, press.size(JsonPath.of("steps[4].heats")));
    assertEquals("", press.value(JsonPath.of("steps[4].thickness")));
  }

  @Test
  void heatsSteelsAndQuenchantsComeAndGo() {
    Editing heat = new Acts(billet()).done("heat steps[0]");
    assertEquals("3", heat.value(JsonPath.of("steps[0].heats[1].times")));
    assertEquals(TEXT, new Acts(heat).done("out steps[0].heats[1]").text());
    Editing each = billet().set("stack.thickness[1]", "1/8");
    Editing three = new Acts(each).done("steel");
    assertEquals(3, three.size(JsonPath.of("stack.steels")));
    assertEquals(3, three.size(JsonPath.of("stack.thickness")));
    Editing two = new Acts(three).done("out stack.steels[0]");
    assertEquals("1/8", two.value(JsonPath.of("stack.thickness[0]")));
    Editing oil = new Acts(billet()).done("quenchant").set("quenchants[0].kind", "brine");
    assertTrue(oil.text().contains("\"quenchants\": [{ \"kind\": \"brine\" }]"), oil.text());
    assertEquals(TEXT, new Acts(oil).done("out quenchants[0]").text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "out stack", "out steps", "out ", "earlier steps[0]", "later steps[3]", "copy stack",
        "step cut 0", "step weld 99", "step  1", "heat steps[9]", "explode steps[0]",
            "out steps[9]",
        "earlier stack.steels[1]"
      })
  void otherActsAreNone(String act) {
    assertThrows(IllegalArgumentException.class, () -> new Acts(billet()).done(act));
  }
}
