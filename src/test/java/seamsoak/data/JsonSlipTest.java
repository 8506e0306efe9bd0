package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonSlipTest {
  private static final String FILE = "f";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{a: 1}            | {`a`: 1}            | 1:2: the key 'a' stands without quotes; write `a`",
        "{`a`: us}         | {`a`: `us`}         | 1:7: 'us' stands without quotes; write `us`",
        "{`a`: 38 mm}      | {`a`: `38 mm`}      | 1:7: '38 mm' stands without quotes; write `38 mm`",
        "{`a`: 1-1/2}      | {`a`: `1-1/2`}      | 1:7: '1-1/2' stands without quotes; write `1-1/2`",
        "{`a`: 2300F}      | {`a`: `2300F`}      | 1:7: '2300F' stands without quotes; write `2300F`",
        "{`a`: 007}        | {`a`: `007`}        | 1:7: '007' stands without quotes; write `007`",
        "[1/8, .060]       | [`1/8`, 0.060]      | 1:2: '1/8' stands without quotes; write `1/8`",
        "{`a`: -.5}        | {`a`: -0.5}         | 1:7: '-.5' begins with its point; write -0.5",
        "{`a`: 1@`b`: 2}   | {`a`: 1,@`b`: 2}    | 1:7: a comma is missing at the end of the line;"
            + " put one after '1'",
        "{`a`: `x`@`b`: 2} | {`a`: `x`,@`b`: 2}  | 1:9: a comma is missing at the end of the line;"
            + " put one after `x`",
        "[{} {}]           | [{}, {}]            | 1:3: a comma is missing between two entries;"
            + " put one after '}'",
        "{`a`: 1,@}        | {`a`: 1@}           | 1:8: a comma too many stands before '}'; take it"
            + " out",
        "[1, ]             | [1 ]                | 1:3: a comma too many stands before ']'; take it"
            + " out",
      })
  void aSlipIsToldAndTheRestIsRead(String text, String meant, String told) {
    Faults faults = new Faults();
    JsonValue read = JsonTree.parse(FILE, written(text), faults);
    assertEquals(values(JsonTree.parse(FILE, written(meant))), values(read));
    Mistake first = faults.mistakes().get(0);
    assertEquals(
        told.replace('`', '"'),
        first.place().line() + ":" + first.place().column() + ": " + first.said());
    assertThrows(Fault.class, faults::throwAny);
  }

  private static String written(String text) {
    return text.replace('`', '"').replace('@', '\n');
  }

  /** Without places. */
  private static String values(JsonValue value) {
    return value.toString().replaceAll("place=Place\\[[^]]*]", "");
  }

  @Test
  void allSlipsOfAFileAreTold() {
    Faults faults = new Faults();
    JsonTree.parse(FILE, "{ units: us,\n \"w\": 1-1/2\n \"t\": [.5, 2 in,],\n}", faults);
    assertEquals(
        List.of(1, 1, 2, 2, 3, 3, 3, 3),
        faults.mistakes().stream().map(m -> m.place().line()).toList());
  }

  /** A comment says nothing and is kept; what it holds is no entry. */
  @Test
  void commentsAreLookedOver() {
    Faults faults = new Faults();
    String text =
        """
        { "units": "us", // the shop's { own
          "t": 1-1/2, // each, 2 of them
          "length": 6 // the note
          /* between, " */
          "steps": [] // , ]
        }
        """;
    JsonTree.parse(FILE, text, faults);
    assertEquals(
        List.of(
            "'1-1/2' stands without quotes; write \"1-1/2\"",
            "a comma is missing at the end of the line; put one after '6'"),
        faults.mistakes().stream().map(Mistake::said).toList());
    assertEquals(List.of(2, 3), faults.mistakes().stream().map(m -> m.place().line()).toList());
  }

  /** An inch mark inside a text is understood as ever, whatever else is wrong. */
  @Test
  void anInchMarkIsNoSlip() {
    Faults faults = new Faults();
    JsonTree.parse(FILE, "{ \"a\": \"3/8\"\", b: 1 }", faults);
    assertEquals(1, faults.mistakes().size());
  }

  /** What a slip of the pen does not explain stays a fault, beside the slips before it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{a: 1, 'b': }              | 1",
        "{\"a\" 1}                  | 0",
        "{\"a\": \"open             | 0",
        "<html>                     | 0",
        "name: base                 | 0",
      })
  void whatIsNoSlipIsRefused(String text, int slips) {
    Fault fault = assertThrows(Fault.class, () -> JsonTree.parse(FILE, text, new Faults()));
    assertEquals(slips + 1, fault.mistakes().size(), fault.getMessage());
  }

  @Test
  void aFileOfSlipsAloneIsGivenUp() {
    String text = "[" + "x, ".repeat(300) + "1]";
    Fault fault = assertThrows(Fault.class, () -> JsonTree.parse(FILE, text, new Faults()));
    assertTrue(fault.mistakes().size() <= 51, fault.mistakes().size() + " told");
  }

  /** What the writer takes is what is right as it stands. */
  @Test
  void noSlipIsWrittenInto() {
    assertThrows(Fault.class, () -> new JsonEditor(FILE, "{ a: 1 }"));
  }
}
