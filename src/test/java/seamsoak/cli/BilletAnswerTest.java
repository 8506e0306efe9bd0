package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.JsonValue;
import seamsoak.support.Ran;

/** What soak, schedule and plan say of a billet, and what they leave on the disk. */
@Tag("slow")
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
    assertEquals("", ran.err(), "it is an answer, no error");
  }

  /** What stainless layers took up of the core's carbon is carbide for the most part. */
  @Test
  void carbideInStainlessLayersIsToldApart() throws IOException {
    String clad =
        """
        { "name": "Clad",
          "stack": { "layers": 3, "steels": ["304", "1095", "304"],
                     "thickness": ["3 mm", "5 mm", "3 mm"], "width": "35 mm", "length": "100 mm" },
          "steps": [ { "do": "weld", "heats": [{ "at": "1100 C", "for": "20 min" }] },
                     { "do": "draw", "thickness": "8 mm", "width": "40 mm",
                       "heats": [{ "at": "1050 C", "for": "10 min" }] } ] }
        """;
    String file = Files.writeString(folder.resolve("clad.json"), clad).toString();
    String told = run("soak", file).out().replaceAll("\\s+", " ");
    assertTrue(told.contains("of that in 304 0.0"), told);
    assertTrue(told.contains("% is dissolved after 2 draw, the rest lies as chromium"), told);
    Ran ran = run("soak", file, "--json");
    double all = ran.number("history.2.layers.0.meanPct");
    double dissolved = ran.number("history.2.layers.0.dissolvedPct");
    assertTrue(dissolved > 0.05 && dissolved < all - 0.02, dissolved + " of " + all);
  }

  /** A smith who thinks in inches says so once, in the file. */
  @Test
  void answersAreInTheUnitsOfTheFileUnlessOthersAreAskedFor() throws IOException {
    String us =
        STUBBORN
            .replace("{ \"name\"", "{ \"units\": \"us\", \"name\"")
            .replace("\"1200 C\"", "2200");
    String file = Files.writeString(folder.resolve("us.json"), us).toString();
    String told = run("soak", file).out();
    assertTrue(told.contains(" F ") && !told.contains(" C)") && !told.contains(" mm"), told);
    String both = run("soak", file, "--units", "both").out();
    assertTrue(both.contains(" C)") && both.contains(" mm)"), both);
    String metric = run("soak", file, "--units", "metric").out();
    assertTrue(
        metric.contains(" C ") && !metric.contains(" F ") && !metric.contains(" in)"), metric);
    String json = run("soak", file, "--json").out();
    assertEquals(json, run("soak", file, "--json", "--units", "metric").out());
  }

  @Test
  void aGalvanizedJacketIsRefusedInTheScheduleToo() throws IOException {
    Ran ran = run("schedule", GALVANIZED);
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Do not do this. step 3 tile: The jacket is galvanized"));
    assertTrue(ran.out().contains("But for that, what follows would hold."), ran.out());
    assertFalse(ran.out().contains("For the kiln's controller"), ran.out());
    assertFalse(ran.out().contains("Next: "), ran.out());
    assertEquals("", ran.err());
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

  @Test
  void jsonSaysThatThereIsNoneToRecommend() throws IOException {
    Ran ran = run("soak", stubborn(), "--json");
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.at("recommended") instanceof JsonValue.NullValue);
    assertFalse(ran.list("options").isEmpty());
    assertFalse(ran.list("advice").isEmpty());
  }

  @Test
  void aGalvanizedJacketIsRefusedWithItsReasonFirst() {
    Ran ran = run("soak", GALVANIZED);
    assertEquals(4, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Do not do this. step 3 tile: The jacket is galvanized"));
    assertTrue(ran.out().indexOf("poisonous") < ran.out().indexOf("Soak at"), ran.out());
    assertFalse(Ran.onTerminal("soak", GALVANIZED, "--samples", "2").out().contains("Soak at"));
    Ran json = run("soak", GALVANIZED, "--json");
    assertTrue(json.list("hardStops").get(0).toString().contains("galvanized"));
  }

  @Test
  void nothingToClearIsAnAnswer() {
    Ran ran = run("soak", SAN_MAI);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out().startsWith("No soak needed: no line will show in the finished blade."),
        ran.out());
    assertEquals(0, run("soak", SAN_MAI, "--json").number("recommended.minutes"));
  }

  @Test
  void jsonHasTheNamesThatProgramsRelyOn() {
    Ran soak = run("soak", GALVANIZED, "--json");
    startsWith(soak, "soak");
    has(
        soak.names(""),
        "billet lines crossings history options recommended goneAlreadyPct dominant advice defaults"
            + " hardStops dominantKind adviceKinds defaultKinds");
    has(
        soak.names("lines.0"),
        "name step kind dipPct seamPct farPct trueWidthMm widthMm contrast visible minutes");
    has(soak.names("history.0"), "step do lengthMm widthMm thicknessMm lines crossings");
    has(
        soak.names("options.0"),
        "temperatureC minutes minutesLow minutesHigh clears metalLossMm skinMm sideSkinMm"
            + " softMm sideSoftMm grainAstm remarks"
            + " remarkKinds");
    has(soak.names("recommended"), "temperatureC minutes reason reasonKind");
    Ran schedule = run("schedule", GALVANIZED, "--json");
    startsWith(schedule, "schedule");
    has(schedule.names(""), "billet segments after critical remarks");
    has(schedule.names("segments.0"), "step kind fromC toC minutes cool why check cautions");
    has(
        schedule.names("after.0"),
        "step linesVisible grainAstm skinMm sideSkinMm softMm sideSoftMm");
    Ran plan = run("plan", GALVANIZED, "--json");
    startsWith(plan, "plan");
    has(
        plan.names(""),
        "billet defaults history preform soak schedule seam hardStops cautions files");
  }

  private static void startsWith(Ran ran, String command) {
    assertEquals(List.of("schema", "command"), ran.names("").subList(0, 2));
    assertEquals("seamsoak/2", ran.text("schema"));
    assertEquals(command, ran.text("command"));
  }

  private static void has(List<String> names, String wanted) {
    assertTrue(names.containsAll(List.of(wanted.split(" "))), names.toString());
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
    assertEquals(quoted, Program.quoted(word));
  }

  @ParameterizedTest
  @ValueSource(strings = {"soak", "schedule", "plan"})
  void eachCautionIsSaidOnceBelowTheAnswerAndNothingBeside(String command) {
    Ran ran = run(command, GALVANIZED);
    String cautions = ran.out().substring(ran.out().indexOf("\nCautions\n"));
    List<String> starts = cautions.lines().filter(l -> l.startsWith("  - ")).toList();
    assertEquals(starts.stream().distinct().toList(), starts);
    assertTrue(starts.stream().anyMatch(l -> l.contains("carbon monoxide")), ran.out());
    assertEquals("", ran.err());
    assertEquals("", run(command, GALVANIZED, "--json").err());
  }

  /** An unknown sheet is not refused, so its danger must be told; no coating has none to tell. */
  @Test
  void aJacketOfUnknownSheetBringsTheCautionAgainstZinc() throws IOException {
    String galvanized = Files.readString(Path.of(GALVANIZED));
    Path unknown = folder.resolve("unknown.json");
    Files.writeString(unknown, galvanized.replace(", \"coating\": \"galvanized\"", ""));
    Path bare = folder.resolve("bare.json");
    Files.writeString(bare, galvanized.replace("\"galvanized\"", "\"none\""));
    assertTrue(run("plan", unknown.toString()).out().contains("Zinc or cadmium on a jacket"));
    assertFalse(run("plan", bare.toString()).out().contains("Zinc or cadmium on a jacket"));
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

  /** JSON is metric: what is asked to be shown makes no difference to a program that reads it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "soak",
        "schedule",
        "plan",
        "pair O1 1084 --layer 2mm",
        "pairs 1084 75Ni8 O1",
        "steels 80CrV2",
        "decarb 1084 --at 1150C --for 10min",
        "migrate 1095 1018 --layer 1mm --at 1100C --for 20min"
      })
  void jsonIsTheSameInAllUnits(String command) {
    List<String> answers = new ArrayList<>();
    for (String units : List.of("us", "metric", "both")) {
      List<String> words = new ArrayList<>(Arrays.asList(command.split(" ")));
      if (words.size() == 1) {
        words.addAll(List.of(SAN_MAI, "--samples", "2"));
      }
      words.addAll(List.of("--json", "--units", units));
      if (command.equals("plan")) {
        words.addAll(List.of("--out", folder.resolve("out").toString()));
      }
      answers.add(Ran.run(words.toArray(String[]::new)).out());
    }
    assertEquals(answers.get(1), answers.get(0));
    assertEquals(answers.get(1), answers.get(2));
    assertTrue(answers.get(0).startsWith("{"));
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
