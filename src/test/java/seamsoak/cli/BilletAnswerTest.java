package seamsoak.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.JsonValue;

/** What soak, schedule and plan say of a billet, and what they leave on the disk. */
class BilletAnswerTest {
  /** Bare faces at a long heat, then only a minute of soaking allowed. */
  private static final String STUBBORN =
      """
      { "name": "Stubborn",
        "stack": { "layers": 5, "steels": ["1084"], "thickness": "6 mm", "width": "30 mm",
                   "length": "150 mm" },
        "steps": [ { "do": "weld", "faces": "open",
                     "heats": [{ "at": "1200 C", "for": "20 min" }] } ],
        "soak": { "most": "1 min" } }
      """;

  private static final String GALVANIZED = "alloy-data/billets/galvanized-jacket.json";
  private static final String SAN_MAI = "alloy-data/billets/san-mai.json";

  @TempDir private Path folder;

  private String stubborn() throws IOException {
    return Files.writeString(folder.resolve("stubborn.json"), STUBBORN).toString();
  }

  @ParameterizedTest
  @ValueSource(strings = {"soak", "schedule", "plan"})
  void linesThatNoSoakClearsAreAnsweredInFullWithCode4(String command) throws IOException {
    Ran ran = run(command, stubborn());
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.out().contains("No soak"), ran.out());
    assertTrue(ran.out().contains("Assumed"), ran.out());
    assertEquals(
        "No soak clears the lines within what is allowed.",
        ran.err().lines().reduce((a, b) -> b).orElseThrow());
  }

  @Test
  void aGalvanizedJacketIsRefusedInTheScheduleToo() throws IOException {
    Ran ran = run("schedule", GALVANIZED);
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Do not do this. step 3 tile: The jacket is galvanized"));
    assertTrue(ran.err().lines().reduce((a, b) -> b).orElseThrow().contains("zinc"));
  }

  @Test
  void scheduleFitsATerminalAndSaysTheAnswerFirst() throws IOException {
    Ran ran = run("schedule", SAN_MAI);
    ran.out()
        .lines()
        .filter(l -> !l.startsWith("Next: "))
        .forEach(l -> assertTrue(l.length() <= 80, l));
    assertTrue(ran.out().startsWith("Normalize at "), ran.out());
    for (String part :
        List.of(
            "harden from ",
            "Conflicts, and what to do",
            "Step by step",
            "Where the magnet lets go",
            "For the kiln's controller")) {
      assertTrue(ran.out().contains(part), part);
    }
  }

  /** The same program in either system: 1.8 F to the degree, 32 F at freezing. */
  @Test
  void theProgramIsWrittenInEitherSystem() throws IOException {
    List<String> metric = program("metric");
    List<String> us = program("us");
    assertEquals("step,segment,rate_C_per_h,to_C,stay_min,then,written_by", metric.get(0));
    assertEquals("step,segment,rate_F_per_h,to_F,stay_min,then,written_by", us.get(0));
    assertEquals(
        "step,segment,rate_F_per_h,rate_C_per_h,to_F,to_C,stay_min,then,written_by",
        program("both").get(0));
    assertEquals(metric.size(), us.size());
    assertTrue(metric.size() > 6);
    for (int i = 1; i < metric.size(); i++) {
      String[] c = metric.get(i).split(",");
      String[] f = us.get(i).split(",");
      assertEquals(1.8 * Double.parseDouble(c[3]) + 32, Double.parseDouble(f[3]), 3.5);
      assertEquals(1.8 * Double.parseDouble(c[2]), Double.parseDouble(f[2]), 1.9);
      assertEquals(c[4], f[4]);
    }
  }

  private List<String> program(String units) throws IOException {
    Path file = folder.resolve(units + ".csv");
    Ran ran = run("schedule", SAN_MAI, "--units", units, "--program", file.toString());
    assertEquals(0, ran.code(), ran.err());
    return Files.readAllLines(file);
  }

  @Test
  void jsonSaysThatThereIsNoneToRecommend() throws IOException {
    Ran ran = run("soak", stubborn(), "--json");
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.at("recommended") instanceof JsonValue.NullValue);
    assertFalse(ran.list("options").isEmpty());
    assertFalse(ran.list("advice").isEmpty());
  }

  @Test
  void aGalvanizedJacketIsRefusedWithItsReasonFirstAndLast() {
    Ran ran = run("soak", GALVANIZED);
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Do not do this. step 3 tile: The jacket is galvanized"));
    assertTrue(ran.err().lines().reduce((a, b) -> b).orElseThrow().contains("poisonous fume"));
    Ran json = run("soak", GALVANIZED, "--json");
    assertTrue(json.list("hardStops").get(0).toString().contains("galvanized"));
  }

  @Test
  void nothingToClearIsAnAnswer() {
    Ran ran = run("soak", SAN_MAI);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("No soak needed: 0 min."), ran.out());
    assertEquals(0, run("soak", SAN_MAI, "--json").number("recommended.minutes"));
  }

  @Test
  void jsonHasTheNamesThatProgramsRelyOn() {
    Ran soak = run("soak", GALVANIZED, "--json");
    startsWith(soak, "soak");
    has(
        soak.names(""),
        "billet lines options recommended goneAlreadyPct dominant advice defaults hardStops");
    has(soak.names("lines.0"), "name step dipPct widthMm visible");
    has(
        soak.names("options.0"),
        "temperatureC minutes minutesLow minutesHigh clears metalLossMm skinMm grainAstm");
    has(soak.names("recommended"), "temperatureC minutes reason");
    Ran schedule = run("schedule", GALVANIZED, "--json");
    startsWith(schedule, "schedule");
    has(schedule.names(""), "billet segments after critical remarks");
    has(schedule.names("segments.0"), "step kind fromC toC minutes cool why check cautions");
    has(schedule.names("after.0"), "step linesVisible grainAstm skinMm");
    Ran plan = run("plan", GALVANIZED, "--json");
    startsWith(plan, "plan");
    has(
        plan.names(""),
        "billet defaults history preform soak schedule seam hardStops cautions files");
  }

  private static void startsWith(Ran ran, String command) {
    assertEquals(List.of("schema", "command"), ran.names("").subList(0, 2));
    assertEquals("seamsoak/1", ran.text("schema"));
    assertEquals(command, ran.text("command"));
  }

  private static void has(List<String> names, String wanted) {
    assertTrue(names.containsAll(List.of(wanted.split(" "))), names.toString());
  }

  /** What a file holds, told as if it lay in another folder: two of them name where they lie. */
  private static byte[] written(Path file, Path folder, Path as) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    boolean tells = file.toString().matches(".*\\.(json|html)");
    return tells
        ? new String(bytes, UTF_8).replace(folder.toString(), as.toString()).getBytes(UTF_8)
        : bytes;
  }

  @Test
  void planWritesItsFilesTheSameEachTime() throws IOException {
    Path first = folder.resolve("a/new/folder");
    Path second = folder.resolve("b");
    Ran ran = runInto(first, "--png");
    runInto(second, "--png");
    List<String> names;
    try (Stream<Path> files = Files.list(first)) {
      names = files.map(f -> f.getFileName().toString()).sorted().toList();
    }
    assertEquals(
        List.of(
            "advice.json",
            "fading.png",
            "fading.svg",
            "kiln.csv",
            "plan.txt",
            "report.html",
            "schedule.png",
            "schedule.svg",
            "seam.png",
            "seam.svg",
            "section-1.png",
            "section-1.svg",
            "soak.png",
            "soak.svg"),
        names);
    for (String name : names) {
      assertTrue(ran.out().contains(first.resolve(name).toString()), name);
      assertArrayEquals(
          written(first.resolve(name), first, first),
          written(second.resolve(name), second, first),
          name);
    }
    assertTrue(Files.readString(first.resolve("plan.txt")).contains("Cautions, always"));
  }

  @Test
  void whatAnotherHandHasPutThereIsNotWrittenOver() throws IOException {
    Path out = folder.resolve("kept");
    assertEquals(4, runInto(out).code());
    assertEquals(4, runInto(out).code(), "files of its own it renews");
    Path mine = out.resolve("soak.svg");
    Files.writeString(mine, "<svg/>");
    Ran refused = runInto(out);
    assertEquals(3, refused.code());
    assertTrue(
        refused.err().contains(mine + ": it was not written by this program"), refused.err());
    assertEquals("<svg/>", Files.readString(mine));
    assertEquals(4, runInto(out, "--replace").code());
    assertTrue(Files.size(mine) > 1000);
  }

  /** The report tells how the steels go together, so the tables of pairs are its inputs too. */
  @Test
  void theMarkOfAPlanIsOfTheTablesOfPairsToo() throws IOException {
    Path data = Files.createDirectory(folder.resolve("data"));
    Path limits = data.resolve("pair-limits.csv");
    List<String> lines = Files.readAllLines(Path.of("alloy-data/pair-limits.csv"));
    Set<String> marks = new HashSet<>();
    Files.write(limits, lines);
    for (int i = 0; i < 2; i++) {
      marks.add(runInto(folder.resolve("same"), "--data", data.toString(), "--json").text("run"));
    }
    assertEquals(1, marks.size(), "the same tables, the same mark");
    List<String> other = new ArrayList<>(lines);
    other.set(1, other.get(1) + " ");
    Files.write(limits, other);
    marks.add(runInto(folder.resolve("other"), "--data", data.toString(), "--json").text("run"));
    assertEquals(2, marks.size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "a/b-c.json; a/b-c.json",
        "my billet.json; \"my billet.json\"",
        "a$b.json; 'a$b.json'",
        "it's 5$.json; 'it'\\''s 5$.json'"
      })
  void aWordIsQuotedForTheShell(String word, String quoted) {
    assertEquals(quoted, Commands.quoted(word));
  }

  private Ran runInto(Path out, String... more) {
    List<String> args =
        new ArrayList<>(List.of("plan", GALVANIZED, "--samples", "2", "--out", out.toString()));
    args.addAll(List.of(more));
    return Ran.run(args.toArray(String[]::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"soak", "schedule", "plan"})
  void eachCautionIsSaidOnceAndApartFromTheAnswer(String command) {
    Ran ran = run(command, GALVANIZED);
    assertFalse(ran.out().contains("carbon monoxide"), ran.out());
    List<String> starts = ran.err().lines().filter(l -> l.startsWith("  - ")).toList();
    assertEquals(starts.stream().distinct().toList(), starts);
    assertTrue(starts.stream().anyMatch(l -> l.contains("carbon monoxide")), ran.err());
  }

  /** An unknown sheet is not refused, so its danger must be told; no coating has none to tell. */
  @Test
  void aJacketOfUnknownSheetBringsTheCautionAgainstZinc() throws IOException {
    String galvanized = Files.readString(Path.of(GALVANIZED));
    Path unknown = folder.resolve("unknown.json");
    Files.writeString(unknown, galvanized.replace(", \"coating\": \"galvanized\"", ""));
    Path bare = folder.resolve("bare.json");
    Files.writeString(bare, galvanized.replace("\"galvanized\"", "\"none\""));
    assertTrue(run("plan", unknown.toString()).err().contains("Zinc or cadmium on a jacket"));
    assertFalse(run("plan", bare.toString()).err().contains("Zinc or cadmium on a jacket"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"soak", "schedule", "plan"})
  void noLineIsWiderThanATerminal(String command) {
    String said = "\nWritten: ";
    Ran ran = run(command, GALVANIZED);
    String text = ran.out().contains(said) ? ran.out().split(said)[0] : ran.out();
    text.lines().filter(l -> !l.startsWith("Next: ")).forEach(l -> assertTrue(l.length() <= 80, l));
  }

  @ParameterizedTest
  @ValueSource(strings = {"soak", "schedule", "plan"})
  void oneSystemOfUnitsIsFreeOfTheOther(String command) {
    String us = run(command, GALVANIZED, "--units", "us").out();
    String metric = run(command, GALVANIZED, "--units", "metric").out();
    assertFalse(us.split("\nWritten")[0].matches("(?s).*\\d (mm|C)\\b.*"), us);
    assertFalse(metric.matches("(?s).*\\d (in|F)\\b.*"), metric);
    assertTrue(us.contains(" F") && metric.contains(" C"));
  }

  private Ran run(String command, String billet, String... more) {
    List<String> args = new ArrayList<>(List.of(command, billet, "--samples", "2"));
    if (command.equals("plan")) {
      args.addAll(List.of("--out", folder.resolve("out").toString()));
    }
    args.addAll(Arrays.asList(more));
    return Ran.run(args.toArray(String[]::new));
  }
}
