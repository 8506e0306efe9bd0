package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Step;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.Mistake;
import seamsoak.support.Contract;
import seamsoak.support.Walks;

/** Every key that a billet file may hold, wrong in several ways. */
class WrongKeysTest {
  /** None of them is a value of any key. */
  private static final List<String> WRONG =
      List.of("null", "true", "{ \"qqq\": [] }", "[[null]]", "\"\\u001b[2J\"", "-1e300");

  /** What is under {@code curves} is read by its names, so it is tried in a whole file. */
  static Stream<Key<?>> keys() {
    return Keys.all().filter(key -> !key.name().equals("curves"));
  }

  @ParameterizedTest
  @MethodSource("keys")
  void eachWrongValueIsToldAtItsPlace(Key<?> key) {
    for (String wrong : WRONG) {
      JsonValue value = JsonTree.parse("f", wrong);
      Entry entry = new Entry(value, key.name(), key.name(), new Reading(Walks.NAMES));
      Fault fault =
          assertThrows(Fault.class, () -> key.values().read(entry), key.name() + " " + wrong);
      assertFalse(fault.mistakes().isEmpty(), key.name() + " " + wrong);
      fault.mistakes().forEach(m -> decent(m, key.name()));
    }
  }

  private static void decent(Mistake mistake, String key) {
    Contract.oneSentence(mistake.sentence() + ".");
    assertTrue(mistake.field().startsWith(key), mistake.field());
    assertTrue(mistake.place().line() == 1 && mistake.place().column() >= 1, mistake.toString());
    assertFalse(mistake.said().contains("Example["), mistake.said());
  }

  /** What is missing is told with how it is written. */
  @Test
  void eachMissingKeyIsTold() {
    for (Step.Kind kind : Step.Kind.values()) {
      Form<Step> form = StepReader.form(kind);
      JsonValue bare = JsonTree.parse("f", "{ \"do\": \"" + kind.word() + "\" }");
      Entry entry = new Entry(bare, "step 1", "steps[0]", new Reading(Walks.NAMES));
      List<String> needed =
          form.keys().stream()
              .filter(k -> k.absent().isEmpty() && !k.name().equals("do"))
              .map(k -> "step 1 has no '" + k.name() + "'")
              .toList();
      if (needed.isEmpty()) {
        form.read(entry.with(entry.reading().amid(List.of(java.util.Optional.of(kind)))));
        continue;
      }
      List<String> told =
          assertThrows(Fault.class, () -> form.read(entry)).mistakes().stream()
              .map(Mistake::found)
              .toList();
      assertTrue(told.containsAll(needed) && told.size() == needed.size(), told.toString());
    }
  }

  @Test
  void wrongCurvesAreToldToo() {
    for (String wrong : WRONG) {
      Fault fault =
          assertThrows(
              Fault.class,
              () ->
                  Walks.billet(
                      "{ \"curves\": "
                          + wrong
                          + ", \"stack\": { \"layers\": 1, \"steels\": [\"1084\"], \"thickness\":"
                          + " \"1 in\", \"width\": \"1 in\", \"length\": \"6 in\" },"
                          + " \"steps\": [ { \"do\": \"cool\", \"in\": \"air\" } ] }"));
      fault.mistakes().forEach(m -> decent(m, "curves"));
    }
  }
}
