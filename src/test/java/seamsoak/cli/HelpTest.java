package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.support.Ran;

/** Help and the examples in it. */
@Tag("slow")
class HelpTest {
  private static final List<String> COMMANDS =
      List.of(
          "page",
          "check",
          "plan",
          "soak",
          "schedule",
          "kiln",
          "face",
          "record",
          "migrate",
          "decarb",
          "heat",
          "pair",
          "pairs",
          "steels",
          "completion");

  @TempDir private Path folder;

  static Stream<String> examples() {
    return Stream.concat(Stream.of(""), COMMANDS.stream())
        .flatMap(c -> (c.isEmpty() ? Ran.run("--help") : Ran.run(c, "--help")).out().lines())
        .map(String::strip)
        .filter(l -> l.startsWith(Program.CALL))
        .filter(
            l -> !l.startsWith(Program.CALL + " page")) // stays until it is ended: PageCommandTest
        .distinct();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleRuns(String example) throws IOException {
    List<String> args = new ArrayList<>();
    Matcher word =
        Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(example.substring(Program.CALL.length()));
    while (word.find()) {
      args.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    int program = args.indexOf("--program");
    if (program > 0) {
      args.set(program + 1, folder.resolve(args.get(program + 1)).toString());
    }
    if (args.get(0).equals("plan") || args.contains("--out")) {
      int out = args.indexOf("--out");
      if (out < 0) {
        args.add("--out");
        args.add("");
        out = args.size() - 2;
      }
      boolean file = args.get(0).equals("face");
      args.set(out + 1, (file ? folder.resolve(args.get(out + 1)) : folder).toString());
    }
    if (List.of("plan", "soak", "schedule", "face").contains(args.get(0))) {
      few(args);
    }
    if (args.get(0).equals("record")) {
      args.set(1, myBillet(args.contains("--undo")).toString());
    }
    Ran ran = Ran.run(args.toArray(String[]::new));
    assertEquals(0, ran.code(), ran.err());
    assertFalse(ran.out().isBlank());
  }

  /**
   * That an example runs is shown by few histories as by many; where it says how many, what it says
   * is taken all the same: the command line then goes on to the billet.
   */
  private static void few(List<String> args) {
    int samples = args.indexOf("--samples");
    if (samples < 0) {
      args.addAll(List.of("--samples", "2"));
      return;
    }
    List<String> asWritten = new ArrayList<>(args);
    asWritten.set(1, "none.json");
    Ran ran = Ran.run(asWritten.toArray(String[]::new));
    assertEquals(3, ran.code(), ran.err());
    assertTrue(ran.err().startsWith("none.json"), ran.err());
    args.set(samples + 1, "2");
  }

  /** One that may be written to, perhaps with something recorded. */
  private Path myBillet(boolean recorded) throws IOException {
    Path mine =
        Files.copy(Path.of("alloy-data/billets/mosaic.json"), folder.resolve("my-billet.json"));
    if (recorded) {
      assertEquals(0, Ran.run("record", mine.toString(), "--step", "1", "--heat", "1").code());
    }
    return mine;
  }

  @Test
  void everyCommandHasExamplesBeforeItsOptions() {
    for (String command : COMMANDS) {
      Ran help = Ran.run(command, "--help");
      assertEquals(0, help.code());
      int example = help.out().indexOf("  " + Program.CALL + " " + command);
      assertTrue(example > 0 && example < help.out().indexOf("--json  "), help.out());
    }
  }

  @Test
  void helpWinsOverEverythingElse() {
    Ran ran = Ran.run("migrate", "--bogus", "-h");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("Examples:"));
    assertEquals("", ran.err());
  }

  @Test
  void noArgumentsWhereNobodyWatchesAreAnsweredWithTwoLines() {
    Ran ran = Ran.run();
    assertEquals(0, ran.code());
    assertEquals(2, ran.out().lines().count());
    assertTrue(ran.out().contains("--help") && ran.out().contains("Example: "), ran.out());
  }

  @Test
  void optionsOfAllCommandsMayStandAnywhere() {
    Ran before = Ran.run("--json", "steels", "1084");
    Ran between = Ran.run("steels", "--json", "1084");
    Ran after = Ran.run("steels", "1084", "--json");
    assertEquals(0, after.code());
    assertEquals(after.out(), before.out());
    assertEquals(after.out(), between.out());
    assertEquals(after.err(), before.err());
    assertEquals(after.err(), between.err());
  }
}
