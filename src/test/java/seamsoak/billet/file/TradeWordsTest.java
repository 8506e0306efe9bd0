package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Step;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.Mistake;
import seamsoak.data.Place;
import seamsoak.source.SourceTable;
import seamsoak.support.Walks;

/** The words of the trade that a file does not use. */
class TradeWordsTest {
  static Stream<CsvTable.Row> rows() {
    return DataFolder.packed().csv("trade-words.csv").rows().stream();
  }

  /** What is said of a step that has a word for a key. */
  private static String unknownKey(String word) {
    JsonValue step =
        JsonTree.parse("f", "{ \"do\": \"grind\", \"depth\": \"1 mm\", \"" + word + "\": 1 }");
    Entry entry = new Entry(step, "step 1", "steps[0]", new Reading(Walks.NAMES));
    return assertThrows(Fault.class, () -> StepReader.form(Step.Kind.GRIND).read(entry))
        .getMessage();
  }

  /** Each leads somewhere: it is refused where it is written, and its sentence is the answer. */
  @ParameterizedTest
  @MethodSource("rows")
  void eachIsAnsweredUnderItsKey(CsvTable.Row row) {
    SourceTable.standing(row);
    if (row.text("key").equals("key")) {
      row.list("words").forEach(word -> assertTrue(unknownKey(word).contains(row.text("means"))));
      return;
    }
    String key = row.text("key").equals("steel") ? "steels" : row.text("key");
    List<Reader<?>> readers =
        Keys.all()
            .filter(k -> k.name().equals(key))
            .<Reader<?>>map(Key::values)
            .filter(r -> !key.equals("in") || !isOfBaths(r))
            .toList();
    assertTrue(!readers.isEmpty(), "no key " + key);
    for (String word : row.list("words")) {
      for (String written : List.of(word, word.toUpperCase(java.util.Locale.ROOT))) {
        for (Reader<?> reader : readers) {
          Set<String> told = told(reader, key, written);
          assertTrue(told.contains(row.text("means")), key + " " + written + ": " + told);
        }
      }
    }
  }

  @Test
  void sentencesAreShortAndNameNoStepThatThereIsNot() {
    Set<String> steps = new HashSet<>();
    Arrays.stream(Step.Kind.values()).forEach(kind -> steps.add(kind.word()));
    rows()
        .forEach(
            row -> {
              String means = row.text("means");
              assertTrue(means.length() <= 140 && !means.endsWith("."), means);
              if (row.text("key").equals("do") && means.startsWith("write ")) {
                assertTrue(steps.contains(means.split("[ ,]")[1]), means);
              }
            });
  }

  @Test
  void aFileIsToldWhatToWrite() {
    Fault fault =
        assertThrows(
            Fault.class,
            () ->
                Walks.billet(
                    "{ \"stack\": { \"layers\": 1, \"steels\": [\"Spring-Steel\"],"
                        + " \"thickness\": \"16 ga\", \"width\": \"1 in\", \"length\": \"6 in\" },"
                        + " \"steps\": [ { \"do\": \"Cut\" } ] }"));
    assertEquals(
        List.of(
            "there is no steel 'Spring-Steel'; it is no one grade: write leaf-spring for one of"
                + " unknown make, or its grade, or better the analysis",
            "do is 'Cut'; write restack, which cuts the bar into pieces and stacks them, or tile, which"
                + " slices it at an angle"),
        fault.mistakes().stream().map(Mistake::said).toList());
  }

  /** What a blade is hardened in goes by the words for a kind of quenchant. */
  private static boolean isOfBaths(Reader<?> reader) {
    return told(reader, "in", "oil-fast").stream()
        .anyMatch(t -> t.startsWith("it is read as Bath"));
  }

  private static Set<String> told(Reader<?> reader, String key, String written) {
    Place place = Place.of(Path.of("f").toString());
    JsonValue text = new JsonValue.TextValue(place, written);
    JsonValue value =
        reader instanceof ListOf && !key.equals("done")
            ? new JsonValue.ListValue(place, List.of(text))
            : text;
    Set<String> told = new HashSet<>();
    try {
      Object read = reader.read(new Entry(value, key, key, new Reading(Walks.NAMES)));
      told.add("it is read as " + read);
    } catch (Fault fault) {
      fault.mistakes().forEach(m -> told.add(m.expected()));
    }
    return told;
  }
}
