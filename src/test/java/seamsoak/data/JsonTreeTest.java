package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.JsonValue.BooleanValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.Member;
import seamsoak.data.JsonValue.NullValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;

class JsonTreeTest {
  @TempDir Path folder;

  @Test
  void everyKindOfValueKnowsItsPlace() {
    ObjectValue root =
        assertInstanceOf(
            ObjectValue.class,
            parse(
                """
                {
                  "list": [1.50, "two", true, null],
                  "inner": { "key": -3e2 }
                }
                """));
    assertEquals(List.of("list", "inner"), List.copyOf(root.members().keySet()));
    Member list = root.members().get("list");
    assertEquals(place(2, 3), list.place());
    assertEquals(
        new ListValue(
            place(2, 11),
            List.of(
                new NumberValue(place(2, 12), 1.5, "1.50"),
                new TextValue(place(2, 18), "two"),
                new BooleanValue(place(2, 25), true),
                new NullValue(place(2, 31)))),
        list.value());
    ObjectValue inner = assertInstanceOf(ObjectValue.class, root.members().get("inner").value());
    assertEquals(
        new Member(place(3, 14), new NumberValue(place(3, 21), -300, "-3e2")),
        inner.members().get("key"));
  }

  @Test
  void commentsAByteOrderMarkAndWindowsLineEndsAreAccepted() {
    ObjectValue root =
        assertInstanceOf(
            ObjectValue.class,
            parse("\uFEFF// a note\r\n{ /* two\r\nlines */ \"a\": \"\u00B0\" } // end"));
    assertEquals(
        new Member(place(3, 10), new TextValue(place(3, 15), "°")), root.members().get("a"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{`a`: 1,~`b`: 2,~ `a`: 3} | f:3:2: the key 'a' stands twice; it already stands in line 1; keep one",
        "{`a`: {`b`: 1, `b`: 1}}   | f:1:16: the key 'b' stands twice; it already stands in line 1; keep one",
        "{`a`: covered}            | f:1:7: 'covered' does not belong here; put a text in double quotes, such as `38 mm` or `covered`",
        "{`a`: 38 mm}              | f:1:10: 'm' does not belong here; put a comma between entries, and write in, not an inch mark, inside a text",
        "{`a`: `3/8``, `b`: 1}     | f:1:12: '`' does not belong here; put a comma between entries, and write in, not an inch mark, inside a text",
        "{`a`: 1~`b`: 2}           | f:2:1: '`' does not belong here; put a comma between entries, and write in, not an inch mark, inside a text",
        "{`a`: 1,~}                | f:2:1: '}' does not belong here; a key in double quotes should stand here",
        "[1,]                      | f:1:4: ']' does not belong here; a value should stand here; is there a comma too many?",
        "{a: 1}                    | f:1:2: 'a' does not belong here; a key in double quotes should stand here",
        "{`a` 1}                   | f:1:6: '1' does not belong here; put a colon between a key and its value",
        "{`a`: `open~}             | f:1:12: this is not JSON; close a text with a double quote on its own line",
        "{`a`: [1}                 | f:1:9: '}' does not belong here; close each bracket with its own kind",
        "{`a`: `C:\\q`}            | f:1:11: 'q' does not belong here; in a text write \\\\ for a backslash and \\` for a double quote",
        "{`a`: 007}                | f:1:8: this is not JSON; write a plain number, or a quantity as a text in double quotes",
        "{`a`: NaN}                | f:1:10: 'NaN' does not belong here; put a text in double quotes, such as `38 mm` or `covered`",
        "{`a`: 1e999}              | f:1:7: the number 1e999 is too large; write a smaller one",
        "{} {}                     | f:1:4: there is more after the end of the JSON; remove it or move it inside",
        "{} x                      | f:1:4: 'x' does not belong here; put a text in double quotes, such as `38 mm` or `covered`",
        "{`a`:~[1, 2~              | f:3:1: the file ends too early; close the bracket that opens in line 2",
        "{`a`:                     | f:1:6: the file ends too early; close the bracket that opens in line 1",
        "/* no end                 | f: the file ends inside a text or comment; close it",
        "// only this              | f: it holds only comments; write JSON between braces",
        "~ ~                       | f: it is empty; write JSON between braces",
      })
  void oneSentenceSaysWhatIsWrong(String text, String sentence) {
    assertEquals(
        sentence.replace('`', '"'), said(() -> parse(text.replace('`', '"').replace('~', '\n'))));
  }

  @Test
  void deepNestingIsRefusedAtItsPlace() {
    assertInstanceOf(ListValue.class, parse("[".repeat(32) + "]".repeat(32)));
    assertEquals(
        "f:1:33: brackets are nested deeper than 32; no file here needs that",
        said(() -> parse("[".repeat(500_000))));
  }

  @Test
  void whatIsNotTextIsRefused() {
    assertEquals(
        "f:2: a zero byte stands here, so it is not text; give JSON", said(() -> parse("{\n\0}")));
    assertEquals("f:2: this is not UTF-8 text; save it as UTF-8", said(() -> latin("{\n\"45°\"}")));
    assertEquals(
        "f:1: this is not UTF-8 text; save it as UTF-8",
        said(() -> parse("\uFEFF{}".getBytes(StandardCharsets.UTF_16BE))));
    assertEquals(
        "f:1: this is not UTF-8 text; save it as UTF-8",
        said(() -> parse(new byte[] {'{', (byte) 0xC3})));
  }

  @Test
  void missingFilesAndFoldersAreNamed() {
    assertEquals(
        "f: there is no such file; check its name and folder",
        said(() -> JsonTree.read("f", folder.resolve("none.json"))));
    assertEquals("f: it is a folder; give the file itself", said(() -> JsonTree.read("f", folder)));
  }

  @Test
  void aHugeFileIsRefusedWithoutReadingIt() throws IOException {
    Path huge = folder.resolve("huge.json");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(100L << 20);
    }
    String sentence = "f: it is larger than 1 MB; a file for this program is a few kB of text";
    assertTimeoutPreemptively(
        Duration.ofSeconds(1), () -> assertEquals(sentence, said(() -> JsonTree.read("f", huge))));
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return ' ';
          }
        };
    assertTimeoutPreemptively(
        Duration.ofSeconds(1), () -> assertEquals(sentence, said(() -> parse(endless))));
  }

  @Test
  void theLargestFileIsRead() {
    assertInstanceOf(ObjectValue.class, parse("{" + " ".repeat((1 << 20) - 2) + "}"));
  }

  @Test
  void aFileOnDiskIsRead() throws IOException {
    Path file = folder.resolve("small.json");
    Files.writeString(file, "{}");
    assertInstanceOf(ObjectValue.class, JsonTree.read("f", file));
  }

  /** Cut or damaged anywhere, a file gives a value or a Fault in one printable line. */
  @Test
  void damageNeverGivesAnythingButAFault() {
    String whole =
        "{ \"a\": [1, 2.5e3, \"x\\u00b0\", null, true], /* c */ \"b\": { \"c\": \"3/8 in\" } } // end";
    for (int i = 0; i < whole.length(); i++) {
      faultOrValue(whole.substring(0, i), "cut at " + i);
    }
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 20_000; n++) {
      StringBuilder damaged = new StringBuilder(whole);
      for (int k = random.nextInt(1, 4); k > 0; k--) {
        damaged.setCharAt(
            random.nextInt(damaged.length()),
            "{}[]\":,\\/*0e-. \n\tx\u0001".charAt(random.nextInt(19)));
      }
      faultOrValue(damaged.toString(), "seed " + seed + ": " + damaged);
    }
  }

  private static void faultOrValue(String text, String report) {
    try {
      parse(text);
    } catch (Fault fault) {
      assertEquals(fault.getMessage().replaceAll("\\p{Cntrl}", "?"), fault.getMessage(), report);
      assertEquals(true, fault.getMessage().matches("f[:0-9]*: .{5,120}; .{5,120}"), report);
    }
  }

  private static JsonValue latin(String text) {
    return parse(text.getBytes(Charset.forName("ISO-8859-1")));
  }

  private static JsonValue parse(String text) {
    return parse(text.getBytes(StandardCharsets.UTF_8));
  }

  private static JsonValue parse(byte[] bytes) {
    return parse(new ByteArrayInputStream(bytes));
  }

  private static JsonValue parse(InputStream in) {
    try {
      return JsonTree.parse("f", TextFile.text("f", TextFile.bytes("f", in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Place place(int line, int column) {
    return new Place("f", line, column);
  }

  private static String said(Runnable read) {
    return assertThrows(Fault.class, read::run).getMessage();
  }
}
