package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What phones and word processors make of quotes. */
class QuotesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{“a”: “b”} | {'a': 'b'}",
        "{„a“: „b“, “c“: ”d”} | {'a': 'b', 'c': 'd'}",
        "{“a”: “3/8””, “b”: '7/8''} | {'a': '3/8″', 'b': '7/8″'}",
        "{'a': “3/8'”, 'b': ''} | {'a': '3/8″', 'b': ''}",
        "[“”, “x”] | ['', 'x']",
        "{'a': “b”} // a “note” | {'a': 'b'} // a “note”",
        "{/* “x” ' */ “a”:1} | {/* “x” ' */ 'a':1}",
        "{“a”: “say \\“b\\”.”} | {'a': 'say \\“b\\”.'}",
        "{“a”:\u00A0“38\u00A0mm”} | {'a': '38\u00A0mm'}",
        "[“1084” “75Ni8”] | ['1084' '75Ni8']",
        "{“a”: “never closed | {'a': 'never closed",
        "“ | '",
        "“\\ | '\\",
      })
  void becomeStraightInTheirPlaces(String set, String json) {
    assertEquals(json.replace('\'', '"'), Quotes.straight(set.replace('\'', '"')));
  }

  /** What is typed with straight quotes comes back as it is, but for inch marks. */
  @Test
  void keepEveryCharacterInItsPlace() {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 2000; n++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(30); i > 0; i--) {
        text.append("\"“”„ ,:{}[]/*\\\na3".charAt(random.nextInt(17)));
      }
      String straight = Quotes.straight(text.toString());
      assertEquals(text.length(), straight.length(), "seed " + seed);
      for (int i = 0; i < straight.length(); i++) {
        char was = text.charAt(i);
        char is = straight.charAt(i);
        boolean quote = was == '"' || Quotes.curly(was);
        assertEquals(true, was == is || quote && (is == '"' || is == '\u2033'), "seed " + seed);
      }
    }
  }

  /** JSON is taken as it stands, whatever quotes its texts hold. */
  @Test
  void areLeftAloneWhereTheFileIsJson() {
    String text = "{\"a\": \"the “big” one”, said he\"}";
    JsonValue.ObjectValue read = (JsonValue.ObjectValue) JsonTree.parse("f", text, new Faults());
    assertEquals(
        "the “big” one”, said he", ((JsonValue.TextValue) read.members().get("a").value()).text());
  }
}
