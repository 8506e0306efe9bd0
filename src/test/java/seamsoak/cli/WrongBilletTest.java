package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Ran;

/** A billet that cannot be read or walked: one sentence, exit code 3, nothing written. */
class WrongBilletTest {
  private static final String GOOD =
      """
      { "stack": { "layers": 3, "steels": ["1084"], "thickness": "5 mm", "width": "30 mm",
                   "length": "100 mm" },
        "steps": [ { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }] } ] }
      """;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"layers\" | \"layer\" | layers",
        "\"layers\": 3 | \"layers\": 3, \"layers\": 4 | layers",
        "\"5 mm\" | 5 | mm",
        "\"1084\" | \"1083\" | there is no steel '1083'",
        "\"steels\": [\"1084\"], | '' | steels",
        "\"1084\" | \"C0.5 Xx1\" | Xx",
        "\"5 mm\" | \"-5 mm\" | negative",
        "\"1200 C\" | \"1200 mm\" | temperature",
        "\"weld\" | \"wled\" | weld",
        "] } | ] | close each bracket",
        "\"stack\" | \"quenchants\": [{ \"kind\": \"oil-fats\" }], \"stack\" | did you mean 'oil-fast'?",
        "\"5 mm\" | \"0.001 mm\" | step 1 weld cannot be done",
      })
  void isRefused(String what, String by, String mentions) throws IOException {
    String bad = GOOD.replaceFirst(java.util.regex.Pattern.quote(what), by);
    assertFalse(bad.equals(GOOD), "nothing was spoiled");
    refused(Files.writeString(folder.resolve("bad.json"), bad), mentions);
  }

  @Test
  void theGoodOneIsAnswered() throws IOException {
    Path good = Files.writeString(folder.resolve("good.json"), GOOD);
    Ran ran = Ran.run("soak", good.toString(), "--samples", "2");
    assertTrue(ran.code() == 0 || ran.code() == 4, ran.err());
  }

  /** Seven slips of one evening, among them two that hide nothing of the rest. */
  @Test
  void sevenMistakesAreTold() throws IOException {
    Path bad =
        Files.writeString(
            folder.resolve("seven.json"),
            """
            { "stack": { "layers": 3, "steels": ["1083"], "thickness": 5, "width": "30 mm",
                "lenght": "100 mm" },
              "steps": [
                { "do": "wled", "heats": [{ "at": "1200 C", "for": "5 min" }] },
                { "do": "draw", "thickness": "12 mm", "width": "12 mm", "width": "13 mm",
                  "heats": [{ "at": "1200 mm", "for": "5 min" }] },
                { "do": "cool" } ] }
            """);
    Ran ran = Ran.run("plan", bad.toString(), "--out", folder.resolve("out").toString());
    assertEquals(3, ran.code());
    assertEquals(
        List.of(
            "line 1: there is no steel '1083'; did you mean '1080'?",
            "line 1: thickness '5' has no unit",
            "line 2: stack has no key 'lenght'; did you mean 'length'?",
            "line 4: do is 'wled'; did you mean 'weld'?",
            "line 5: the key 'width' stands twice",
            "line 6: at '1200 mm' has 'mm' where its unit should stand",
            "line 7: step 3 cool has no 'in'"),
        ran.err()
            .lines()
            .map(l -> l.replace(bad + ", ", "").replaceFirst("(?<!\\?); .*\\.$", ""))
            .toList());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void anEmptyFileAFolderAndNothingAtAllAreRefused() throws IOException {
    refused(Files.createFile(folder.resolve("empty.json")), "it is empty");
    refused(Files.createDirectory(folder.resolve("folder")), "it is a folder");
    refused(folder.resolve("missing.json"), "there is no such file");
  }

  @Test
  void aHugeFileIsRefusedUnread() throws IOException {
    Path huge = folder.resolve("huge.json");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(100L << 20);
    }
    refused(huge, "larger than 1 MB");
  }

  @Test
  void aFileInPlaceOfTheFolderIsRefused() throws IOException {
    Path good = Files.writeString(folder.resolve("good.json"), GOOD);
    Ran ran = Ran.run("plan", good.toString(), "--out", good.toString());
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("it is a file, not a folder"), ran.err());
    assertEquals(GOOD, Files.readString(good));
  }

  @Test
  void aMissingFolderOfTablesIsRefused() {
    Ran ran = Ran.run("steels", "--data", folder.resolve("none").toString());
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("no such folder"), ran.err());
  }

  private void refused(Path billet, String mentions) {
    Path out = folder.resolve("out");
    for (String command : new String[] {"soak", "schedule", "plan"}) {
      Ran ran =
          command.equals("plan")
              ? Ran.run(command, billet.toString(), "--out", out.toString())
              : Ran.run(command, billet.toString());
      assertEquals(3, ran.code(), ran.err());
      assertEquals("", ran.out());
      assertEquals(1, ran.err().lines().count(), ran.err());
      assertTrue(ran.err().startsWith(billet.toString()), ran.err());
      assertTrue(ran.err().contains(mentions), ran.err());
    }
    assertFalse(Files.exists(out), "something was written");
  }
}
