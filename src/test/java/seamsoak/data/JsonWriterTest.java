package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.source.Standing;

class JsonWriterTest {
  private record Line(String name, double widthMm, boolean visible) {}

  private record Answer(
      String schema,
      List<Line> lines,
      Optional<Line> recommended,
      OptionalDouble minutes,
      OptionalInt count,
      Standing standing,
      Map<String, Object> more) {}

  @Test
  void aTreeOfRecordsIsWrittenByTheirNames() {
    Map<String, Object> more = new LinkedHashMap<>();
    more.put("nothing", null);
    more.put("words", List.of("3/8\"", "45°", "a\nb"));
    Answer answer =
        new Answer(
            "seamsoak/1",
            List.of(new Line("restack", 0.12345678, true)),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalInt.of(7),
            Standing.JUDGEMENT,
            more);
    assertEquals(
        """
        {
          "schema" : "seamsoak/1",
          "lines" : [
            {
              "name" : "restack",
              "widthMm" : 0.123457,
              "visible" : true
            }
          ],
          "recommended" : null,
          "minutes" : null,
          "count" : 7,
          "standing" : "judgement",
          "more" : {
            "nothing" : null,
            "words" : [
              "3/8\\"",
              "45°",
              "a\\nb"
            ]
          }
        }
        """,
        JsonWriter.write(answer));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "1150, 1150",
    "1234567.8, 1234570",
    "0.1, 0.1",
    "0.30000000000000004, 0.3",
    "-2.9999999999, -3",
    "1.2345649e-7, 0.000000123456",
    "4.9e-324, 4.94066e-324",
    "1e15, 1000000000000000",
  })
  void numbersHaveSixDigits(double value, String shown) {
    String written = JsonWriter.write(value).strip();
    assertEquals(Double.parseDouble(shown), Double.parseDouble(written));
    assertEquals(written.toLowerCase(Locale.ROOT).indexOf('e'), -1);
    if (shown.indexOf('e') < 0) {
      assertEquals(shown, written);
    }
  }

  @Test
  void wholeNumbersKeepAllTheirDigits() {
    assertEquals("1234567890123\n", JsonWriter.write(1234567890123L));
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      assertEquals(
          "[\n  0.5,\n  \"memory\"\n]\n", JsonWriter.write(Arrays.asList(0.5, Standing.MEMORY)));
      assertEquals("\"computed\"\n", JsonWriter.write(Standing.COMPUTED));
      assertEquals("\"partly\"\n", JsonWriter.write(Standing.PARTLY));
      assertEquals("\"common_practice\"\n", JsonWriter.write(Standing.COMMON_PRACTICE));
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotFiniteNeverReachesAnAnswer(double bad) {
    assertThrows(
        IllegalStateException.class, () -> JsonWriter.write(List.of(new Line("a", bad, true))));
  }

  @Test
  void unknownTypesAreAMistakeOfOurs() {
    assertThrows(IllegalStateException.class, () -> JsonWriter.write(List.of(new Object())));
  }

  /** What is written reads back with every number right to half a unit of its sixth digit. */
  @Test
  void whatIsWrittenReadsBack() {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    List<Double> numbers = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      double size = Math.pow(10, random.nextDouble(-20, 20));
      numbers.add(random.nextBoolean() ? size : -size);
    }
    JsonValue read = JsonTree.parse("answer", JsonWriter.write(numbers));
    List<JsonValue> items = ((JsonValue.ListValue) read).items();
    assertEquals(numbers.size(), items.size());
    for (int i = 0; i < items.size(); i++) {
      double back = ((JsonValue.NumberValue) items.get(i)).value();
      double value = numbers.get(i);
      assertEquals(value, back, 5.0000001e-6 * Math.abs(value), "seed " + seed);
    }
  }
}
