package seamsoak.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.source.Caution;
import seamsoak.source.Source;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;
import seamsoak.unit.UnitSystem;

/** What the rows of cautions.csv say and what they rest on. */
class CautionTextsTest {
  private static final int LONGEST = 240;

  private static final Pattern CLAUSE =
      Pattern.compile("CFR|§|\\b\\d{4}\\.\\d|\\bsection \\d|\\([a-z]\\)|\\b\\d+\\.\\d+\\.\\d");

  private static final Pattern QUANTITY = Pattern.compile("\\{([^|{}]+)\\|([^|{}]+)\\}");

  private static final Pattern CELSIUS = Pattern.compile("(?:(\\d+) to )?(\\d+) C");

  private static final Pattern FAHRENHEIT = Pattern.compile("(?:(\\d+) to )?(\\d+) F");

  private static final Pattern ONE_SYSTEM = Pattern.compile("\\d (?:C|F|mm|m|cm|L|kg|in|ft)\\b");

  private static final SourceTable SOURCES = SourceTable.load(DataFolder.packed());

  static Stream<CsvTable.Row> rows() {
    return DataFolder.packed().csv("cautions.csv").rows().stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isOneOrTwoShortSentences(CsvTable.Row row) {
    String statement = row.text("statement");
    assertTrue(statement.length() <= LONGEST, () -> statement.length() + ": " + statement);
    assertTrue(statement.endsWith("."), statement);
    assertTrue(statement.split("[.?!] ").length <= 2, statement);
    assertTrue(row.text("id").matches("[a-z0-9]+(-[a-z0-9]+)*"), row.text("id"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void citesNoClauseToTheSmithAndNoneFromMemory(CsvTable.Row row) {
    assertFalse(CLAUSE.matcher(row.text("statement")).find(), row.text("statement"));
    Source source = SOURCES.find(row.text("source")).orElseThrow();
    if (SourceTable.standing(row) == Standing.MEMORY) {
      assertFalse(CLAUSE.matcher(row.text("note")).find(), row.text("note"));
      assertFalse(CLAUSE.matcher(source.citation()).find(), source.citation());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isNotBetterKnownThanItsSource(CsvTable.Row row) {
    Standing standing = SourceTable.standing(row);
    Standing source = SOURCES.find(row.text("source")).orElseThrow().standing();
    Set<Standing> allowed =
        switch (source) {
          case SEEN, PARTLY -> Set.of(Standing.SEEN, Standing.PARTLY);
          default -> Set.of(source);
        };
    assertTrue(allowed.contains(standing), row.text("id") + " " + standing + " from " + source);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void givesNumbersInBothSystems(CsvTable.Row row) {
    String statement = row.text("statement");
    String others = QUANTITY.matcher(statement).replaceAll("");
    assertFalse(ONE_SYSTEM.matcher(others).find(), statement);
    assertFalse(others.matches(".*[{|}].*"), statement);
    Matcher quantity = QUANTITY.matcher(statement);
    while (quantity.find()) {
      Matcher celsius = CELSIUS.matcher(quantity.group(1));
      if (celsius.find()) {
        Matcher fahrenheit = FAHRENHEIT.matcher(quantity.group(2));
        assertTrue(fahrenheit.find(), statement);
        assertSame(celsius.group(2), fahrenheit.group(2), statement);
        if (celsius.group(1) != null) {
          assertSame(celsius.group(1), fahrenheit.group(1), statement);
        }
      }
    }
  }

  @Test
  void theSystemAskedForIsSaidFirst() {
    Caution flash =
        CautionTable.load(DataFolder.packed())
            .at(CautionStep.HARDEN, EnumSet.allOf(Condition.class))
            .stream()
            .filter(c -> c.id().equals("oil-flash"))
            .findFirst()
            .orElseThrow();
    assertTrue(flash.said(UnitSystem.US).contains("at least 90 F below"));
    assertTrue(flash.said(UnitSystem.METRIC).contains("at least 50 C below"));
    assertTrue(flash.said(UnitSystem.BOTH).contains("at least 90 F (50 C) below"));
    assertEquals(flash.said(UnitSystem.METRIC), flash.json());
  }

  // A reading or a difference; both are rounded to 10 F, hence half of that.
  private static void assertSame(String celsius, String fahrenheit, String statement) {
    double difference = 1.8 * Double.parseDouble(celsius);
    double printed = Double.parseDouble(fahrenheit);
    double off = Math.min(Math.abs(printed - difference), Math.abs(printed - difference - 32));
    assertEquals(0, off, 5, statement);
  }
}
