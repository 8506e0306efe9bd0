package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text and rows that other programs wrote. */
class ForeignTextTest {
  private static final String TEXT = "Zeit;°C\n14:03;1121,4\n";

  private static String decoded(byte[] bytes) {
    return ForeignText.of("a.csv", bytes).content();
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"})
  void theEncodingIsFound(String name) {
    assertEquals(TEXT, decoded(TEXT.getBytes(Charset.forName(name))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
  void aMarkSaysWhich(String name) {
    assertEquals(TEXT, decoded(("\uFEFF" + TEXT).getBytes(Charset.forName(name))));
  }

  @Test
  void whatIsNoTextIsRefused() {
    assertThrows(Fault.class, () -> decoded(new byte[0]));
    assertThrows(Fault.class, () -> decoded(" \n ".getBytes(StandardCharsets.UTF_8)));
    assertThrows(Fault.class, () -> decoded("a\0b,1\n2,3,4".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void theSumIsThatOfTheBytes() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        ForeignText.of("a", "abc".getBytes(StandardCharsets.UTF_8)).sha256());
  }

  @Test
  void rowsComeInAnyWidthWithTheirLines() {
    List<String> rows = new ArrayList<>();
    ForeignRows.each(
        "a.csv",
        "one\r\n\r\na;\"b;c\";d\nlast;",
        ';',
        (line, cells) -> rows.add(line + String.join("|", cells)));
    assertEquals(3, rows.size());
    assertTrue(rows.get(0).endsWith("one"));
    assertTrue(rows.get(1).endsWith("a|b;c|d"), rows.get(1));
    assertTrue(rows.get(2).endsWith("last|"));
  }

  @Test
  void aMarkThatIsNeverClosedIsAFault() {
    Fault open = assertThrows(Fault.class, () -> ForeignRows.of("a.csv", "a,b\n\"c,d\n1,2\n", ','));
    assertTrue(open.getMessage().contains("a.csv:2"), open.getMessage());
    String swallowed = "a,b\n\"c,d\n" + "1,2\n".repeat(30) + "e\",f\n";
    assertThrows(Fault.class, () -> ForeignRows.of("a.csv", swallowed, ','));
  }
}
