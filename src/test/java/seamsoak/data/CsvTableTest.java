package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {
  private static CsvTable read(byte[] bytes) {
    return CsvTable.read("t.csv", new ByteArrayInputStream(bytes));
  }

  private static CsvTable read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(String text, String message) {
    Fault fault = assertThrows(Fault.class, () -> read(text));
    assertEquals(message, fault.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void readsEveryKindOfLineEnd(String end) {
    CsvTable table = read("id,C" + end + "a, 0.8 " + end + end + "b," + end);
    assertEquals(List.of("id", "C"), table.columns());
    assertEquals(2, table.rows().size());
    assertEquals(OptionalDouble.of(0.8), table.rows().get(0).number("C"));
    assertEquals(OptionalDouble.empty(), table.rows().get(1).number("C"));
    assertEquals(new Place("t.csv", 2, 3), table.rows().get(0).place("C"));
    assertEquals(new Place("t.csv", 4, 3), table.rows().get(1).place("C"));
    assertEquals(new Place("t.csv", 4, 0), table.rows().get(1).place());
  }

  @Test
  void dropsByteOrderMark() {
    CsvTable table = read("\uFEFFid,C\na,1\n");
    assertEquals("a", table.rows().get(0).text("id"));
    assertEquals(new Place("t.csv", 2, 3), table.rows().get(0).place("C"));
  }

  @Test
  void findsCellsAfterQuotedSeparatorsAndLineEnds() {
    CsvTable table = read("id,note,C\na,\"one, \"\"two\"\"\nthree\",x\nb,,y\n");
    assertEquals("one, \"two\"\nthree", table.rows().get(0).text("note"));
    assertEquals(new Place("t.csv", 3, 8), table.rows().get(0).place("C"));
    assertEquals(new Place("t.csv", 4, 4), table.rows().get(1).place("C"));
  }

  @Test
  void listsPartsOfACell() {
    CsvTable table = read("id,list\na, one ;two;; \nb,\n");
    assertEquals(List.of("one", "two"), table.rows().get(0).list("list"));
    assertEquals(List.of(), table.rows().get(1).list("list"));
  }

  @ParameterizedTest
  @CsvSource({"7,7", "-1.5,-1.5", "+2,2", ".5,0.5", "3.,3", "6.2e-7,6.2e-7", "1E3,1000"})
  void readsPlainNumbers(String cell, double value) {
    assertEquals(value, read("x,y\n1," + cell + "\n").rows().get(0).required("y"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0.8d", "0x1p3", "NaN", "Infinity", "1e999", "0.8 %", "1-2", "--1", "\"0,8\""})
  void refusesOtherNumbers(String cell) {
    CsvTable.Row row = read("x,y\n1," + cell + "\n").rows().get(0);
    Fault fault = assertThrows(Fault.class, () -> row.number("y"));
    assertEquals(new Place("t.csv", 2, 3), fault.place());
    assertTrue(fault.getMessage().contains("in column y is not a number"), fault.getMessage());
  }

  @Test
  void refusesBlankWhereANumberIsNeeded() {
    CsvTable.Row row = read("x,y\n1,\n").rows().get(0);
    Fault fault = assertThrows(Fault.class, () -> row.required("y"));
    assertEquals("t.csv:2:3: column y is blank; it needs a number", fault.getMessage());
  }

  @Test
  void refusesUnknownColumn() {
    CsvTable.Row row = read("x,y\n1,2\n").rows().get(0);
    Fault fault = assertThrows(Fault.class, () -> row.text("z"));
    assertEquals("t.csv:1: no column 'z'; the table needs it", fault.getMessage());
  }

  @Test
  void refusesRaggedLine() {
    refused("x,y\n1,2\n\n1,2,3\n", "t.csv:4: the line has 3 cells; the header has 2");
    refused("x,y\n1\n", "t.csv:2: the line has 1 cells; the header has 2");
  }

  @Test
  void refusesDoubledColumn() {
    refused("x,y, x\n", "t.csv:1:5: column 'x' stands twice; name each column once");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "\uFEFF"})
  void refusesEmptyFile(String text) {
    refused(text, "t.csv: the file is empty; give a table with a header line");
  }

  @Test
  void refusesNulCharacter() {
    refused("x,y\n1,\0\n", "t.csv:2:3: a zero byte stands here; give plain text");
  }

  @Test
  void refusesOtherEncodings() {
    byte[] latin = "x,y\n1,\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
    Fault fault = assertThrows(Fault.class, () -> read(latin));
    assertEquals("t.csv:2:3: this is not UTF-8 text; save it as UTF-8", fault.getMessage());
    byte[] cut = {'x', '\n', (byte) 0xC3};
    assertEquals(new Place("t.csv", 2, 1), assertThrows(Fault.class, () -> read(cut)).place());
  }

  @Test
  void refusesQuotationMarkLeftOpen() {
    Fault fault = assertThrows(Fault.class, () -> read("x,y\n1,2\n1,\"2\n1,3\n"));
    assertTrue(fault.getMessage().contains("quotation mark"), fault.getMessage());
    assertEquals(2, fault.place().line());
  }
}
