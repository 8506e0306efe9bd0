package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Single values changed in a text; all else keeps its bytes. */
class JsonEditorTest {
  private static final String COMMENTED =
      """
      {
        // Invented.
        "name": "bar", // mine
        "steps": [
          { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min", "times": 3 }] },
          // as thin as it goes
          // without cracks
          { "do": "draw" }, /* checked */

          // from here on only planned

          { "do": "grind", "depth": "0.4 mm",
            "note": "slowly" } // the last
          // { "do": "twist" }
        ]
      }
      """;

  private static JsonEditor edit(String text) {
    return new JsonEditor("bar.json", text);
  }

  private static JsonPath at(String path) {
    return JsonPath.of(path);
  }

  private static Map<String, Object> map(Object... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      map.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return map;
  }

  /** Text before, a path, what it is set to, text after. */
  static Stream<Arguments> sets() {
    return Stream.of(
        Arguments.of("{\"a\":1}", "a", 2, "{\"a\":2}"),
        Arguments.of("{\"a\":1 /* x */}", "a", "b\"", "{\"a\":\"b\\\"\" /* x */}"),
        Arguments.of("{\"a\":1}", "b", true, "{\"a\":1,\"b\":true}"),
        Arguments.of("{ \"a\": 1 }", "b", List.of(), "{ \"a\": 1, \"b\": [] }"),
        Arguments.of("{ \"a\": 1 }", "b.c", 2, "{ \"a\": 1, \"b\": { \"c\": 2 } }"),
        Arguments.of("{ \"a\": 1 }", "b[0].c[0]", 2, "{ \"a\": 1, \"b\": [{ \"c\": [2] }] }"),
        Arguments.of("{}", "b", 2, "{ \"b\": 2 }"),
        Arguments.of("{\"a\":[ ]}", "a[0]", 2, "{\"a\":[2]}"),
        Arguments.of("{\"a\": [ 1 ]}", "a[1]", 2, "{\"a\": [ 1, 2 ]}"),
        Arguments.of("{ \"a\": 1 /* x */ }", "b", 2, "{ \"a\": 1, /* x */ \"b\": 2 }"),
        Arguments.of("{\n\t\"a\": 1\n}", "b", 2, "{\n\t\"a\": 1,\n\t\"b\": 2\n}"),
        Arguments.of("{\r\n  \"a\": 1\r\n}", "b", 2, "{\r\n  \"a\": 1,\r\n  \"b\": 2\r\n}"),
        Arguments.of("{\r  \"a\": 1 // x\r}", "b", 2, "{\r  \"a\": 1, // x\r  \"b\": 2\r}"),
        Arguments.of(
            "{\n  \"a\": 1\n, \"b\": 2\n}", "c", 3, "{\n  \"a\": 1\n, \"b\": 2, \"c\": 3\n}"),
        Arguments.of("{\"a\":[ // none\n]}", "a[0]", 2, "{\"a\":[ // none\n  2\n]}"),
        Arguments.of("{ \"a\": [1, // x\n 2] }", "a", List.of(1, 2), "{ \"a\": [1, // x\n 2] }"),
        Arguments.of("{ \"a\": [1, // x\n 2] }", "a", List.of(1), "{ \"a\": [1 // x\n  ] }"),
        Arguments.of("{ \"a\": {\"b\": 1.50} }", "a", Map.of("b", 1.5), "{ \"a\": {\"b\": 1.50} }"),
        Arguments.of("{ \"a\": {\"b\": 1} }", "a", Map.of("c", 1), "{ \"a\": { \"c\": 1 } }"),
        Arguments.of("// head\n{ \"a\": 1 } // end", "a", 2, "// head\n{ \"a\": 2 } // end"));
  }

  @ParameterizedTest
  @MethodSource("sets")
  void isSet(String before, String path, Object value, String after) {
    assertEquals(after, edit(before).set(at(path), value).text());
    assertSame(after, edit(after).set(at(path), value).text());
  }

  @Test
  void aValueIsReplacedInPlace() {
    assertEquals(
        COMMENTED.replace("0.4 mm", "0.5 mm"),
        edit(COMMENTED).set(at("steps[2].depth"), "0.5 mm").text());
  }

  @Test
  void whatIsPutInStandsAsItsNeighborsDo() {
    JsonEditor done =
        edit(COMMENTED)
            .set(at("steps[2].seen"), map("line", "none"))
            .set(at("steps[3]"), map("do", "cool", "in", "air"))
            .insert(at("steps[0]"), map("do", "cut"))
            .set(at("soak.most"), "30 min");
    assertEquals(
        COMMENTED
            .replace("\"slowly\" }", "\"slowly\",\n      \"seen\": { \"line\": \"none\" } }")
            .replace("// the last", "// the last\n    { \"do\": \"cool\", \"in\": \"air\" }")
            .replace("} } //", "} }, //")
            .replace("[\n", "[\n    { \"do\": \"cut\" },\n")
            .replace("  ]\n", "  ],\n  \"soak\": { \"most\": \"30 min\" }\n"),
        done.text());
  }

  @Test
  void aLineThatWouldGrowTooLongIsBroken() {
    String once =
        edit(COMMENTED)
            .set(
                at("steps[0].heats[0].done"),
                List.of(map("on", "2026-11-20", "at", "1210 C", "for", "7 min")))
            .text();
    assertEquals(
        COMMENTED.replace(
            "\"times\": 3 }",
            "\"times\": 3,\n      \"done\": [{ \"on\": \"2026-11-20\", \"at\": \"1210 C\", \"for\": \"7 min\" }] }"),
        once);
    String twice =
        edit(once).set(at("steps[0].heats[0].done[1]"), map("at", "1210 C", "for", "7 min")).text();
    assertEquals(
        once.replace("7 min\" }]", "7 min\" }, { \"at\": \"1210 C\", \"for\": \"7 min\" }]"),
        twice);
  }

  @Test
  void aTreeTooWideForALineHasALineForEachEntry() {
    List<Integer> minutes = Stream.iterate(100, i -> i + 1).limit(60).toList();
    String text =
        edit("{\n  \"a\": 1\n}\n")
            .set(at("curves.kiln 1"), map("file", "x", "minutes", minutes))
            .text();
    assertEquals(
        """
        {
          "a": 1,
          "curves": {
            "kiln 1": {
              "file": "x",
              "minutes": [
                100, 101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 111, 112, 113, 114, 115, 116, 117, 118, 119, 120, 121,
                122, 123, 124, 125, 126, 127, 128, 129, 130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140, 141, 142, 143,
                144, 145, 146, 147, 148, 149, 150, 151, 152, 153, 154, 155, 156, 157, 158, 159
              ]
            }
          }
        }
        """,
        text);
  }

  @Test
  void whatIsTakenOutTakesItsCommentsAlong() {
    assertEquals(
        COMMENTED.replace(
            "    // as thin as it goes\n    // without cracks\n    { \"do\": \"draw\" }, /* checked */\n",
            ""),
        edit(COMMENTED).remove(at("steps[1]")).text());
    assertEquals(
        COMMENTED.replace(",\n      \"note\": \"slowly\"", "").replace("\"do\": \"grind\", ", ""),
        edit(COMMENTED).remove(at("steps[2].note")).remove(at("steps[2].do")).text());
    assertEquals(
        COMMENTED
            .replace("    \"name\": \"bar\", // mine\n", "")
            .replace("  \"name\": \"bar\", // mine\n", ""),
        edit(COMMENTED).remove(at("name")).text());
  }

  @Test
  void theLastOneOutTakesTheCommaBefore() {
    String text =
        COMMENTED.replace(
            "\n    { \"do\": \"grind\", \"depth\": \"0.4 mm\",\n      \"note\": \"slowly\" } // the last\n",
            "");
    assertEquals(
        text.replace("{ \"do\": \"draw\" }, /*", "{ \"do\": \"draw\" } /*"),
        edit(COMMENTED).remove(at("steps[2]")).text());
    assertEquals("{ \"a\": [] }", edit("{ \"a\": [ 1 ] }").remove(at("a[0]")).text());
    assertEquals(
        "{ \"a\": [1 // x\n  ] }", edit("{ \"a\": [1, // x\n 2] }").remove(at("a[1]")).text());
    assertEquals("{ \"a\": [2] }", edit("{ \"a\": [1, // x\n 2] }").remove(at("a[0]")).text());
  }

  @Test
  void whatIsMovedTakesItsCommentsAlong() {
    assertEquals(
        """
        {
          // Invented.
          "name": "bar", // mine
          "steps": [
            // as thin as it goes
            // without cracks
            { "do": "draw" }, /* checked */
            { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min", "times": 3 }] },

            // from here on only planned

            { "do": "grind", "depth": "0.4 mm",
              "note": "slowly" } // the last
            // { "do": "twist" }
          ]
        }
        """,
        edit(COMMENTED).move(at("steps[0]"), 1).text());
    assertEquals(COMMENTED, edit(COMMENTED).move(at("steps[0]"), 2).move(at("steps[2]"), 0).text());
    assertEquals(
        "{ \"a\": [3, // y\n 1, // x\n   2\n ] }",
        edit("{ \"a\": [1, // x\n 2, 3 // y\n ] }").move(at("a[2]"), 0).text());
  }

  @Test
  void aSingleValueBecomesAList() {
    assertEquals(
        "{ \"a\": [{ /* x */ \"b\": 1 }, 2] }",
        edit("{ \"a\": { /* x */ \"b\": 1 } }").enlist(at("a")).set(at("a[1]"), 2).text());
  }

  /** Phones set quotes so; what is there stays so. */
  @Test
  void typographicQuotesStay() {
    String text =
        "{ \u201Ca\u201D:\u00A0\u201C7/8\"\u201D,\u00A0// \u201Clike, so\u201D\n  \u201Eb\u201C: [\u201C}\u201D, 2] }";
    assertEquals(
        text.replace("\u201C7/8\"\u201D", "\"1 in\"").replace(", 2]", "]"),
        edit(text).set(at("a"), "1 in").remove(at("b[1]")).text());
    assertEquals(
        text.replace("2] }", "2, \"x\"],\n  \"c\": { \"d\": 1 } }"),
        edit(text).set(at("b[2]"), "x").set(at("c.d"), 1).text());
  }

  @Test
  void thereMustBeAPlaceForIt() {
    for (String path : List.of("b[1]", "steps[4]", "steps.x", "name.x")) {
      assertThrows(IllegalArgumentException.class, () -> edit(COMMENTED).set(at(path), 1), path);
    }
    assertThrows(IllegalArgumentException.class, () -> edit(COMMENTED).remove(at("steps[3]")));
    assertThrows(IllegalArgumentException.class, () -> at("a[b]"));
  }
}
