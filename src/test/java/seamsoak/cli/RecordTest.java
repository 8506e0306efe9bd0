package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Child;
import seamsoak.support.Contract;
import seamsoak.support.Ran;

/** What was done and seen is written into the billet file, and nothing else is changed in it. */
@Tag("slow")
class RecordTest {
  private static final String WELD =
      "{ \"do\": \"weld\", \"heats\": [{ \"at\": \"1200 C\", \"for\": \"5 min\", \"times\": 2 },\n"
          + "      { \"at\": \"1180 C\", \"for\": \"4 min\" }] }";
  private static final String GRIND = "{ \"do\": \"grind\", \"depth\": \"0.4 mm\" }";
  private static final String DRAW =
      "{ \"do\": \"draw\", \"thickness\": \"20 mm\", \"width\": \"20 mm\",\n"
          + "      \"heats\": [{ \"at\": \"1150 C\", \"for\": \"3 min\", \"times\": 2 }] }";
  private static final String RESTACK =
      "{ \"do\": \"restack\", \"across\": 2, \"high\": 2, \"turn\": \"alternate\" }";

  private static final String BILLET =
      "{\n  // Invented.\n"
          + "  \"stack\": { \"layers\": 7, \"steels\": [\"1084\", \"75Ni8\"],\n"
          + "    \"thickness\": \"4 mm\", \"width\": \"30 mm\", \"length\": \"200 mm\" },\n"
          + "  \"steps\": [\n    // flux twice\n    "
          + WELD
          + ",\n    "
          + DRAW
          + ", // as square as it goes\n    "
          + GRIND
          + ",\n    "
          + RESTACK
          + ",\n    { \"do\": \"weld\", \"heats\": [{ \"at\": \"1200 C\", \"for\": \"5 min\" }] }\n"
          + "  ]\n}\n";

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void aBillet() throws Exception {
    file = Files.writeString(folder.resolve("bar.json"), BILLET);
  }

  private Ran record(String... options) {
    List<String> args = new ArrayList<>(List.of("record", file.toString()));
    args.addAll(List.of(options));
    Ran ran = Contract.run(args);
    Contract.said(ran, "");
    return ran;
  }

  private Ran done(String... options) {
    Ran ran = record(options);
    assertEquals(0, ran.code(), ran.err());
    assertEquals("", ran.err());
    return ran;
  }

  private void refused(int code, String said, String... options) throws IOException {
    Map<Path, String> before = Contract.snapshot(folder);
    Ran ran = record(options);
    assertEquals(code, ran.code(), ran.out() + ran.err());
    assertTrue(ran.err().contains(said), ran.err());
    Map<Path, String> after = Contract.snapshot(folder);
    after.keySet().removeIf(p -> p.endsWith(".seamsoak-lock"));
    before.keySet().removeIf(p -> p.endsWith(".seamsoak-lock"));
    assertEquals(before, after);
  }

  private void reads(String text) throws IOException {
    assertEquals(text, Files.readString(file));
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void aHeatIsRecorded() throws Exception {
    Ran ran =
        done(
            "--step",
            "1",
            "--heat",
            "1",
            "--at",
            "1210C",
            "--for",
            "5.5 min",
            "--on",
            "2026-11-20");
    reads(
        BILLET.replace(
            "\"times\": 2 },",
            "\"times\": 2,\n      \"done\": [{ \"on\": \"2026-11-20\", \"at\": \"1210 C\", \"for\": \"5.5 min\" }] },"));
    assertTrue(
        ran.out()
            .startsWith(
                "Written: step 1 weld, heat 1 on 2026-11-20: 2210 F (1210 C) for 5.5 min (planned"),
        ran.out());
    assertTrue(
        flat(ran.out()).contains("Now: 1 of 3 heats of step 1 weld is done. Next: its heat 2"),
        ran.out());
  }

  @Test
  void heatsBeforeItAreDoneAsPlanned() throws Exception {
    done("--step", "1", "--heat", "2", "--for", "6 min");
    reads(
        BILLET.replace(
            "\"times\": 2 },",
            "\"times\": 2,\n      \"done\": [{}, { \"at\": \"1200 C\", \"for\": \"6 min\" }] },"));
  }

  @Test
  void heatsAreCountedThroughAllOfAStep() throws Exception {
    Ran ran = done("--step", "1", "--heat", "3");
    reads(BILLET.replace("\"4 min\" }]", "\"4 min\", \"done\": [{}] }]"));
    assertTrue(
        flat(ran.out())
            .contains(
                "step 1 weld, heat 3: as planned. Now: step 1 weld is done. Next: step 2 draw"),
        ran.out());
    done("--step", "1", "--heat", "1", "--at", "1190 C");
    assertTrue(
        Files.readString(file).contains("\"done\": [{ \"at\": \"1190 C\", \"for\": \"5 min\" }]"),
        Files.readString(file));
  }

  @Test
  void aStepIsRecorded() throws Exception {
    Ran ran = done("--step", "3", "--set", "depth=0.020in", "--on", "2026-11-21");
    reads(
        BILLET.replace(
            GRIND,
            GRIND.replace(
                " }", ", \"done\": { \"on\": \"2026-11-21\", \"depth\": \"0.020 in\" } }")));
    assertTrue(
        flat(ran.out())
            .startsWith("Written: step 3 grind on 2026-11-21: 0.020 in (0.51 mm) deep (planned"),
        ran.out());
    done("--step", "4");
    assertTrue(
        Files.readString(file).contains("\"turn\": \"alternate\", \"done\": {} }"),
        Files.readString(file));
  }

  @Test
  void whatWasDoneIsWrittenEvenIfThePlanNoLongerGoesOn() throws Exception {
    Ran ran = done("--step", "2", "--set", "thickness=21 mm", "--set", "width=19 mm");
    assertTrue(
        flat(ran.out())
            .contains("Now step 4 restack cannot be done: pieces of a bar 18.2 mm by 20.2 mm"),
        ran.out());
    done("--undo");
    Ran json = done("--step", "2", "--set", "thickness=21 mm", "--set", "width=19 mm", "--json");
    assertEquals("cannot_be_done", json.text("remarks.0.kind"));
    assertTrue(json.text("remarks.0.sentence").startsWith("step 4 restack cannot"), json.out());
    assertEquals("steps[3]", json.text("remarks.0.field"));
    assertEquals(List.of(), done("--step", "3", "--json").list("remarks"));
  }

  @Test
  void whatCannotBeIsNotWritten() throws Exception {
    refused(3, "nothing was written", "--step", "2", "--set", "thickness=300 mm");
    refused(3, "nothing was written", "--step", "3", "--set", "depth=12 mm");
  }

  @Test
  void whatWasSeenIsAdded() throws Exception {
    Ran ran = done("--step", "5", "--seen", "restack: faint, 1/32 in", "--etched", "as-cooled");
    String one =
        "{ \"where\": \"restack\", \"line\": \"faint\", \"width\": \"1/32 in\", \"etched\": \"as-cooled\" }";
    String weld = "\"heats\": [{ \"at\": \"1200 C\", \"for\": \"5 min\" }]";
    String text = Files.readString(file);
    assertTrue(flat(text).contains(weld + ", \"seen\": [" + one + "] }"), text);
    assertTrue(
        flat(ran.out())
            .equals(
                "Written: step 5 weld, seen: restack, faint, 1/32 in, as-cooled. No heat or step is marked as done, so all of the file counts as done. "),
        ran.out());
    done("--step", "5", "--seen", "layers: none", "--on", "2026-11-22", "--with", "coffee, 1 h");
    assertTrue(
        flat(Files.readString(file))
            .contains(
                one
                    + ", { \"on\": \"2026-11-22\", \"where\": \"layers\", \"line\": \"none\","
                    + " \"with\": \"coffee, 1 h\" }]"),
        Files.readString(file));
    done("--undo");
    reads(text);
  }

  @Test
  void oneLookBecomesAList() throws Exception {
    String with =
        BILLET.replace(
            "0.4 mm\" }",
            "0.4 mm\",\n      \"seen\": /* bare */ { \"where\": \"layers\", \"line\": \"none\" } }");
    Files.writeString(file, with);
    done("--step", "3", "--seen", "layers:plain");
    reads(
        with.replace(
                "{ \"where\": \"layers\", \"line\": \"none\" }",
                "[{ \"where\": \"layers\", \"line\": \"none\" },\n      { \"where\": \"layers\", \"line\": \"plain\" }]")
            .replace("},\n      { \"where\"", "}, { \"where\""));
  }

  /** Who looks at a billet after a step has done it. */
  @Test
  void aStepThatWasLookedAtIsDone() throws Exception {
    done("--step", "1", "--heat", "3");
    Ran ran = done("--step", "3", "--seen", "layers: faint", "--on", "2026-11-22");
    assertTrue(
        flat(Files.readString(file))
            .contains(
                "\"done\": { \"on\": \"2026-11-22\" }, \"seen\": [{ \"on\": \"2026-11-22\", \"where\": \"layers\", \"line\": \"faint\" }] }"),
        Files.readString(file));
    assertTrue(flat(ran.out()).contains("Now: step 3 grind is done."), ran.out());
    done("--step", "1", "--seen", "layers: faint");
    assertTrue(done("--undo", "--json").text("takenBack").equals("step 1 weld, what was seen"));
  }

  @Test
  void nothingIsWrittenOverUnasked() throws Exception {
    done("--step", "1", "--heat", "1", "--at", "1210 C", "--for", "5 min", "--on", "2026-11-20");
    String text =
        Files.readString(file).replace("\"at\": \"1210 C\"", "/* pyrometer */ \"at\": \"1210 C\"");
    Files.writeString(file, text);
    refused(
        2, "step 1 weld, heat 1 is recorded already; say --replace", "--step", "1", "--heat", "1");
    done("--step", "1", "--heat", "1", "--at", "1220 C", "--replace");
    refused(2, "recorded just so", "--step", "1", "--heat", "1", "--at", "1220 C", "--replace");
    reads(text.replace("\"on\": \"2026-11-20\", ", "").replace("1210 C", "1220 C"));
    done("--step", "3");
    refused(2, "step 3 grind is recorded already", "--step", "3", "--set", "depth=1 mm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "record needs --step N; the next is step 1 weld | --at 1200C",
        "record needs --heat M; step 1 weld has 3 | --step 1",
        "there is no step 6; the last is 5 | --step 6",
        "there is no heat 4 of step 1 weld; the last is 3 | --step 1 --heat 4",
        "--step: '0' is no number of one | --step 0",
        "--heat: 'two' is no number of one | --step 1 --heat two",
        "step 3 grind has no heats | --step 3 --at 1200C",
        "--at: at 'hot' does not begin with a number | --step 5 --at hot",
        "--at: at is '3000 C'; a heat is between | --step 5 --at 3000C",
        "--for: for '5' has no unit | --step 5 --for 5",
        "--on: on is '20.11.2026' | --step 5 --on 20.11.2026",
        "--set: done has no key 'dept'; did you mean 'depth'? | --step 3 --set dept=1mm",
        "--set | --step 3 --set depth",
        "--seen is where, a colon and how it looked | --step 5 --seen faint",
        "--seen: line is 'fain'; did you mean 'faint'? | --step 5 --seen layers:fain",
        "--seen: where is 'tile' but no such step comes before | --step 5 --seen tile:faint",
        "--seen: width is given for a line that was not seen | --step 5 --seen layers:none,1mm",
        "--etched: etched is 'hot' | --step 5 --seen layers:none --etched hot",
        "--etched and --with go with --seen | --step 5 --etched hardened",
        "--etched and --with go with --seen | --step 5 --with vinegar",
        "--undo takes back what was recorded last; give nothing else | --undo --step 1",
      })
  void whatDoesNotFitIsSaid(String said, String options) throws Exception {
    refused(2, said, options.strip().split(" "));
  }

  @Test
  void theLastIsTakenBackByteForByte() throws Exception {
    refused(3, "there is nothing to take back", "--undo");
    done("--step", "1", "--heat", "1");
    String one = Files.readString(file);
    done("--step", "1", "--heat", "2", "--at", "1210 C");
    Ran ran = done("--undo");
    reads(one);
    assertTrue(
        flat(ran.out())
            .startsWith(
                "Taken back: step 1 weld, heat 2. Now: 1 of 3 heats of step 1 weld is done."),
        ran.out());
    Files.writeString(file, one + "// by hand\n");
    refused(3, "it was changed by another hand since the last record", "--undo");
    Files.writeString(file, one);
    assertTrue(done("--undo").out().contains("No heat or step is marked as done"));
    reads(BILLET);
    assertEquals(BILLET, Files.readString(folder.resolve("bar.json.before")));
  }

  @Test
  void onATerminalItAsks() throws Exception {
    Ran ran = asked(List.of("", "", "1210", "1210 C", "", "2026-11-20"));
    assertEquals(0, ran.code(), ran.err());
    reads(
        BILLET.replace(
            "\"times\": 2 },",
            "\"times\": 2,\n      \"done\": [{ \"on\": \"2026-11-20\", \"at\": \"1210 C\", \"for\": \"5 min\" }] },"));
    assertEquals(
        "Step of 5 [1 weld]: Heat of 3 [1]: Temperature [1200 C]: at '1210' has no unit; write a"
            + " temperature such as 2150 F, 1500 °F, 1177 C or 1450 K, or begin the file with \"units\": \"us\" or \"metric\".\n"
            + "Temperature [1200 C]: Time [5 min]: Day, - for none ["
            + LocalDate.now()
            + "]: ",
        ran.err());
    assertTrue(
        asked(List.of("", "", "", "", "-"))
            .err()
            .startsWith("Step of 5 [1 weld]: Heat of 3 [2]: "));
    assertTrue(Files.readString(file).contains("\"5 min\" }, {}]"), Files.readString(file));
  }

  @Test
  void afterTheLastHeatItAsksWhatCameOut() throws Exception {
    Ran ran = asked(List.of("", "", "20.5 mm", "", "-"), "--step", "2", "--heat", "2");
    assertTrue(
        ran.err()
            .startsWith(
                "Temperature [1150 C]: Time [3 min]: Thickness [20 mm]: Width [20 mm]: Day"),
        ran.err());
    String text = flat(Files.readString(file));
    assertTrue(
        text.contains("\"done\": [{}, {}] }], \"done\": { \"thickness\": \"20.5 mm\" } }"), text);
    ran = asked(List.of("wide", "0.5 mm", "2026-13-01", "-"), "--step", "3");
    assertTrue(
        ran.err().contains("Depth [0.4 mm]: depth 'wide' does not begin with a number"), ran.err());
    text = flat(Files.readString(file));
    assertTrue(text.contains("\"depth\": \"0.4 mm\", \"done\": { \"depth\": \"0.5 mm\" } }"), text);
  }

  @Test
  void whatIsSaidIsNotAsked() {
    Ran seen = asked(List.of(""), "--seen", "layers: none");
    assertEquals("Step of 5 [5 weld]: ", seen.err());
    assertEquals(0, seen.code());
    assertEquals("", asked(List.of(), "--step", "1", "--heat", "1", "--at", "1210 C").err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "9", "1,4", "1,1,,,yesterday"})
  void whoGoesAwayHasWrittenNothing(String answers) throws Exception {
    Ran ran = asked(answers.isEmpty() ? List.of() : List.of(answers.split(",", -1)));
    assertEquals(2, ran.code());
    assertTrue(ran.err().endsWith("\nnothing was written. See record --help.\n"), ran.err());
    assertEquals("", ran.out());
    reads(BILLET);
  }

  private Ran asked(List<String> answers, String... options) {
    List<String> args = new ArrayList<>(List.of("record", file.toString()));
    args.addAll(List.of(options));
    return Ran.answered(answers, args.toArray(String[]::new));
  }

  @Test
  void theAnswerIsTheSameWhateverUnitsAreShown() throws Exception {
    String[] heat = {"--step", "1", "--heat", "1", "--at", "1210 C", "--for", "4 min"};
    Map<String, String> said = new TreeMap<>();
    for (String units : List.of("us", "metric", "both")) {
      for (boolean json : List.of(true, false)) {
        List<String> args = new ArrayList<>(List.of(heat));
        args.addAll(List.of("--units", units));
        if (json) {
          args.add("--json");
        }
        said.put(units + json, done(args.toArray(String[]::new)).out());
        assertTrue(Files.readString(file).contains("\"at\": \"1210 C\""));
        done("--undo");
        reads(BILLET);
      }
    }
    assertEquals(said.get("ustrue"), said.get("metrictrue"));
    assertEquals(said.get("ustrue"), said.get("bothtrue"));
    assertTrue(said.get("usfalse").contains("2210 F for 4 min"), said.toString());
    assertTrue(said.get("metricfalse").contains("1210 C for 4 min"), said.toString());
  }

  @Test
  void theAnswerAsJson() {
    Ran ran = done("--step", "1", "--heat", "2", "--at", "1210 C", "--for", "4 min", "--json");
    assertEquals(List.of("schema", "command", "recorded", "now", "remarks"), ran.names(""));
    assertEquals("step 1 weld, heat 2", ran.text("recorded.title"));
    assertEquals(2, ran.number("recorded.heat.heat"));
    assertEquals(1210, ran.number("recorded.heat.atC"));
    assertEquals(4, ran.number("recorded.heat.minutes"));
    assertEquals(1, ran.number("now.step"));
    assertEquals(2, ran.number("now.heat"));
    assertEquals(5, ran.list("now.left").size());
    Ran seen = done("--step", "5", "--seen", "restack: plain, 1 mm", "--json");
    assertEquals(1, seen.number("recorded.seen.widthMm"));
    assertEquals("plain", seen.text("recorded.seen.line"));
  }

  static Stream<Arguments> layouts() {
    return Stream.of(
        Arguments.of("with a mark", "\uFEFF" + BILLET),
        Arguments.of("with CR and LF", BILLET.replace("\n", "\r\n")),
        Arguments.of("without a last line end", BILLET.stripTrailing()),
        Arguments.of(
            "on one line", BILLET.replaceAll("//[^\n]*", "").replaceAll("\\s*\n\\s*", " ")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("layouts")
  void aFileKeepsItsLayout(String name, String text) throws Exception {
    Files.writeString(file, text);
    done("--step", "5", "--at", "1210 C");
    String with = Files.readString(file);
    assertEquals(
        text,
        with.replaceFirst(",\\s*\"done\": \\[\\{ \"at\": \"1210 C\", \"for\": \"5 min\" }]", ""));
    done("--undo");
    reads(text);
  }

  @Test
  void aLinkStaysALink() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
    Ran ran = Contract.run(List.of("record", link.toString(), "--step", "3"));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(Files.isSymbolicLink(link));
    assertFalse(Files.readString(file).equals(BILLET));
  }

  @Test
  void whatIsNoBilletIsRefused() throws Exception {
    Files.write(file, (BILLET + "\u00e4").getBytes(StandardCharsets.ISO_8859_1));
    refused(3, "this is not UTF-8", "--step", "3");
    Files.writeString(file, BILLET.replace("grind", "grnd"));
    refused(3, "did you mean 'grind'?", "--step", "3");
    Files.writeString(file, BILLET + " ".repeat(1 << 20));
    refused(3, "it is larger than 1 MB", "--step", "3");
    Files.delete(file);
    refused(3, "there is no such file", "--step", "3");
    Files.createDirectory(file);
    refused(3, "it is a folder", "--step", "3");
    file = Path.of("/dev/null");
    refused(3, "it is a device or pipe", "--step", "3");
  }

  @Test
  void aFolderThatMayOnlyBeReadIsLeftAsItIs() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(does("mount", "-t", "tmpfs", "none", disk.toString()));
    try {
      file = Files.writeString(disk.resolve("bar.json"), BILLET);
      assumeTrue(does("mount", "-o", "remount,ro", disk.toString()));
      refused(3, "its folder may not be written to", "--step", "3");
    } finally {
      does("umount", disk.toString());
    }
  }

  @Test
  void aFullDiskLeavesTheFileAsItIs() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(does("mount", "-t", "tmpfs", "-o", "size=64k", "none", disk.toString()));
    try {
      file = Files.writeString(disk.resolve("bar.json"), BILLET);
      try (var fill = Files.newOutputStream(disk.resolve("filler"))) {
        for (int i = 0; i < 64; i++) {
          fill.write(new byte[1 << 10]);
        }
      } catch (IOException full) {
        // as it should be
      }
      refused(3, "No space left on device", "--step", "3");
    } finally {
      does("umount", disk.toString());
    }
  }

  private static boolean does(String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** Of two at once the one that is too late is told, or both are in the file. */
  @Test
  void twoAtOnceLoseNothing() throws Exception {
    List<Child> children = new ArrayList<>();
    for (String step : List.of("3", "4", "5")) {
      children.add(
          Child.start(
              folder,
              List.of(),
              "seamsoak.cli.Main",
              List.of("record", "bar.json", "--step", step)));
    }
    int written = 0;
    for (Child child : children) {
      int code = child.code();
      assertTrue(
          code == 0 || child.said().contains("nothing was written; try it again"), child.said());
      written += code == 0 ? 1 : 0;
    }
    assertTrue(written >= 1);
    assertEquals(written, Files.readString(file).split("\"done\"", -1).length - 1);
    for (int i = 0; i < written; i++) {
      done("--undo");
    }
    reads(BILLET);
  }
}
