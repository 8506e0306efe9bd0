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
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.JsonValue;
import seamsoak.source.SourceTable;
import seamsoak.support.Ran;

/** What {@code --sources} tells, and that nothing sways an answer without being told. */
@Tag("slow")
class SourcesTest {
  private static final String MEMORY = "from memory";
  private static final String ACTIVITY = "austenite-activity-";

  /** Two steels, a jacket, bare faces, a soak that is needed: all that a walk can meet. */
  private static final String BILLET =
      """
      { "name": "Traced",
        "stack": { "layers": 3, "steels": ["1084", "75Ni8"], "thickness": "5 mm",
                   "width": "15 mm", "length": "200 mm" },
        "steps": [ { "do": "weld", "faces": "open", "heats": [{ "at": "1200 C", "for": "8 min" }] },
                   { "do": "tile", "angle": "45 deg", "slice": "15 mm",
                     "jacket": { "steel": "1008", "thickness": "1 mm", "coating": "none" } },
                   { "do": "weld", "heats": [{ "at": "1150 C", "for": "4 min" }] },
                   { "do": "unjacket" } ] }
      """;

  @TempDir private Path folder;

  static Stream<List<String>> commands() {
    return Stream.concat(
        Stream.of(
            List.of("steels"),
            List.of("steels", "1084"),
            List.of("steels", "D2"),
            List.of("steels", "Ni200"),
            List.of("migrate", "1095", "75Ni8", "--layer", "1mm", "--at", "1100C", "--for", "9min"),
            List.of("migrate", "304", "Ni200", "--layer", "1mm", "--at", "1100C", "--for", "9min"),
            List.of("migrate", "1095", "1018", "--layer", "1mm", "--at", "650C", "--for", "1h"),
            List.of("migrate", "W2", "5160", "--layer", "1mm", "--at", "780C", "--for", "1h"),
            List.of("decarb", "80CrV2", "--at", "820C", "--for", "20min"),
            List.of("decarb", "D2", "--at", "1300C", "--for", "2min", "--edge", "covered"),
            List.of("decarb", "C0.8 Mn0.7", "--at", "1000C", "--for", "9min"),
            List.of("decarb", "9260", "--at", "860C", "--for", "9min", "--atmosphere", "still-air"),
            List.of("pair", "1084", "75Ni8"),
            List.of("pair", "D2", "O1"),
            List.of("pair", "304", "Ni200"),
            List.of("pair", "A36", "410"),
            List.of("pair", "C0.8 Mn0.7", "W2", "--layer", "1mm"),
            List.of("pairs"),
            List.of("pairs", "1018", "52100", "316"),
            List.of("heat", "alloy-data/logs/forge.csv", "--tip", "steel"),
            List.of("schedule", "1095", "75Ni8", "--layer", "1mm", "--section", "6mm")),
        Stream.of(
            List.of("check"),
            List.of("soak"),
            List.of("schedule"),
            List.of("plan"),
            List.of("face"),
            List.of("face", "--after", "harden")));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void itStandsBelowTheAnswerAndFitsATerminal(List<String> command) throws IOException {
    Ran with = run(command, "--sources");
    String[] parts = with.out().split("\nSources \\(");
    assertEquals(2, parts.length, with.out());
    parts[1]
        .lines()
        .takeWhile(l -> !l.startsWith("Written:"))
        .filter(l -> !l.startsWith("Next: "))
        .forEach(l -> assertTrue(l.length() <= 80, l));
    assertFalse(run(command).out().contains("\nSources ("));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void jsonNamesSourceStandingRangeAndErrorOfEachEntry(List<String> command) throws IOException {
    Ran ran = run(command, "--sources", "--json");
    SourceTable sources = SourceTable.load(DataFolder.packed());
    for (JsonValue entry : ran.list("sources")) {
      assertEquals(
          List.of(
              "name",
              "gives",
              "unit",
              "source",
              "citation",
              "standing",
              "terms",
              "notes",
              "ranges",
              "statedError",
              "exceeded"),
          List.copyOf(members(entry).keySet()));
      String source = text(entry, "source");
      boolean own = text(entry, "citation").equals("the user's own figures");
      assertEquals(own, source.isEmpty(), text(entry, "name"));
      for (String key : own ? new String[0] : source.split(", ")) {
        assertTrue(sources.find(key).isPresent(), key);
        assertTrue(
            text(entry, "citation").contains(sources.find(key).orElseThrow().citation()), key);
      }
      assertFalse(text(entry, "standing").isEmpty());
      assertFalse(text(entry, "statedError").isEmpty());
    }
    List<String> both =
        ran.list("sources").stream().map(e -> text(e, "name") + text(e, "gives")).toList();
    assertEquals(Set.copyOf(both).size(), both.size());
  }

  /** Each row from memory behind an entry says so there, one by one or with all its fellows. */
  @ParameterizedTest
  @MethodSource("commands")
  void everyNumberFromMemorySaysSo(List<String> command) throws IOException {
    Ran ran = run(command, "--sources", "--json");
    for (JsonValue entry : ran.list("sources")) {
      String name = text(entry, "name");
      List<CsvTable.Row> rows =
          name.startsWith(ACTIVITY)
              ? rows("activity-parameters.csv", "element", name.substring(ACTIVITY.length()))
              : rows("correlations.csv", "correlation", name);
      String term = name.startsWith(ACTIVITY) ? "parameter" : "term";
      for (CsvTable.Row row : rows) {
        if (row.text("standing").equals(MEMORY)) {
          assertTrue(
              isFromMemory(entry, row.text(term)), name + " " + row.text(term) + ": " + entry);
        }
      }
    }
  }

  @Test
  void figuresOfASteelSayWhichAreFromMemory() throws IOException {
    Ran ran =
        run(List.of("decarb", "1008", "--at", "1000C", "--for", "9min", "--sources", "--json"));
    JsonValue analysis = entry(ran, "1008 analysis");
    assertTrue(isFromMemory(analysis, "C"), analysis.toString());
    assertTrue(isFromMemory(analysis, "Si"), analysis.toString());
    assertFalse(isFromMemory(analysis, "Mn"), analysis.toString());
  }

  @Test
  void nickelInTheActivityIsFromMemory() throws IOException {
    Ran ran =
        run(List.of("decarb", "75Ni8", "--at", "1000C", "--for", "9min", "--sources", "--json"));
    JsonValue nickel = entry(ran, ACTIVITY + "Ni");
    assertTrue(isFromMemory(nickel, "LC0"), nickel.toString());
    assertFalse(isFromMemory(nickel, "dG"), nickel.toString());
  }

  @Test
  void rangesThatWereExceededNameWhoAndByHowMuch() throws IOException {
    Ran pair = run(migrate("304", "Ni200", "1100C"));
    assertTrue(left(pair, ACTIVITY + "Ni").contains("304 Ni 9.25"), pair.out());
    assertTrue(left(pair, ACTIVITY + "Ni").contains("Ni200 Ni 99.5"), pair.out());
    assertTrue(left(pair, ACTIVITY + "Cr").contains("304 Cr 19.0"), pair.out());
    Ran d2 = run(List.of("steels", "D2", "--sources", "--json"));
    assertTrue(left(d2, "andrews1965-ae1").contains("D2 Cr 12.0"), d2.out());
    assertTrue(left(d2, "hirai1997-solidus").contains("D2 Cr 12.0"), d2.out());
    Ran hot =
        run(List.of("decarb", "1084", "--at", "1280C", "--for", "9min", "--sources", "--json"));
    assertEquals(
        List.of("the hold temperature 1280.0"), left(hot, "birks-jackson1970-scaling"), hot.out());
    assertEquals(List.of(), left(hot, "agren1986-mobility"), hot.out());
  }

  @Test
  void whatPlaysNoPartIsNotListed() throws IOException {
    assertFalse(names(run(migrate("1095", "1018", "650C"))).contains("agren1986-mobility"));
    assertTrue(names(run(migrate("1095", "1018", "650C"))).contains("pure-phases"));
    assertFalse(names(run(migrate("1095", "1018", "1100C"))).contains("agren1982-ferrite"));
    assertFalse(names(run(migrate("1095", "1018", "1100C"))).contains("oneill1993-surface"));
  }

  /**
   * Every coefficient of everything that an answer does not name is changed at once: the answer
   * must stay the same to the last digit.
   */
  @ParameterizedTest
  @MethodSource("commands")
  void nothingSwaysAnAnswerWithoutBeingNamed(List<String> command) throws IOException {
    Set<String> named = names(run(command, "--sources", "--json"));
    Path data = Files.createDirectory(folder.resolve("data"));
    change(data, "correlations.csv", "correlation", "", "coefficient", named);
    change(data, "activity-parameters.csv", "element", ACTIVITY, "constant", named);
    assertEquals(answer(command), answer(command, "--data", data.toString()), named::toString);
  }

  private String answer(List<String> command, String... more) throws IOException {
    List<String> all = new ArrayList<>(command);
    all.addAll(Arrays.asList(more));
    Ran ran = run(all, "--json");
    return ran.code() + "\n" + ran.out() + "\n" + ran.err();
  }

  /** And that the comparison would notice: what is named does sway it. */
  @Test
  void whatIsNamedSways() throws IOException {
    List<String> command = List.of("decarb", "75Ni8", "--at", "1000C", "--for", "9min");
    for (String name : List.of("agren1986-mobility", "birks-jackson1970-scaling")) {
      Path data = Files.createDirectory(folder.resolve(name));
      Set<String> others =
          DataFolder.packed().csv("correlations.csv").rows().stream()
              .map(r -> r.text("correlation"))
              .filter(c -> !c.equals(name))
              .collect(Collectors.toSet());
      change(data, "correlations.csv", "correlation", "", "coefficient", others);
      assertFalse(
          run(command, "--json")
              .out()
              .equals(run(command, "--json", "--data", data.toString()).out()),
          name);
    }
  }

  @Test
  void theFormulaMarkedAsUsedIsTheOneUsed() throws IOException {
    for (String steel : List.of("1018", "1084", "75Ni8", "D2", "304")) {
      Ran ran = run(List.of("steels", steel, "--json"));
      if (steel.equals("304")) {
        // austenite at every temperature: there is nothing to mark
        for (String use : List.of("Ac1", ran.text("upper"))) {
          assertEquals(List.of(), used(ran, use), use);
        }
        assertFalse(ran.text("unknown.ac1C").isBlank());
        assertFalse(ran.text("unknown.ac3OrAccmC").isBlank());
      } else {
        assertEquals(ran.number("ac1C.value"), marked(ran, "Ac1"), steel);
        assertEquals(ran.number("ac3OrAccmC.value"), marked(ran, ran.text("upper")), steel);
      }
      if (List.of("304", "D2").contains(steel)) {
        assertEquals(List.of(), used(ran, "half of Ms"), "too much alloy for any");
        assertFalse(ran.text("unknown.msC").isBlank());
      } else {
        assertEquals(2, used(ran, "half of Ms").size(), steel);
      }
      assertEquals(ran.number("highestForgingC.value"), marked(ran, "forge up to"), steel);
      assertFalse(ran.list("chosen").isEmpty());
    }
  }

  private static List<JsonValue> used(Ran ran, String use) {
    return ran.list("formulas").stream()
        .filter(
            f ->
                members(f).get("used").value() instanceof JsonValue.TextValue t
                    && t.text().equals(use))
        .toList();
  }

  private static double marked(Ran ran, String use) {
    List<JsonValue> used = used(ran, use);
    assertEquals(1, used.size(), use);
    return ((JsonValue.NumberValue) members(used.get(0)).get("valueC").value()).value();
  }

  private static List<String> migrate(String first, String second, String at) {
    return List.of(
        "migrate",
        first,
        second,
        "--layer",
        "1mm",
        "--at",
        at,
        "--for",
        "9min",
        "--sources",
        "--json");
  }

  private static void change(
      Path data, String file, String by, String before, String column, Set<String> kept)
      throws IOException {
    CsvTable table = DataFolder.packed().csv(file);
    List<String> lines = new ArrayList<>(List.of(String.join(",", table.columns())));
    for (CsvTable.Row row : table.rows()) {
      boolean keep = kept.contains(before + row.text(by));
      lines.add(
          table.columns().stream()
              .map(
                  c ->
                      c.equals(column) && !keep && !row.text(c).isEmpty()
                          ? Double.toString(1.03 * row.required(c))
                          : '"' + row.text(c) + '"')
              .collect(Collectors.joining(",")));
    }
    Files.write(data.resolve(file), lines);
  }

  private static List<CsvTable.Row> rows(String file, String column, String value) {
    return DataFolder.packed().csv(file).rows().stream()
        .filter(r -> r.text(column).equals(value))
        .toList();
  }

  private static boolean isFromMemory(JsonValue entry, String term) {
    Map<String, JsonValue.Member> terms =
        ((JsonValue.ObjectValue) members(entry).get("terms").value()).members();
    if (terms.isEmpty()) {
      return text(entry, "standing").equals(MEMORY);
    }
    return terms.entrySet().stream()
        .filter(t -> t.getKey().startsWith(MEMORY))
        .flatMap(t -> ((JsonValue.ListValue) t.getValue().value()).items().stream())
        .anyMatch(t -> ((JsonValue.TextValue) t).text().equals(term));
  }

  /** The ranges an entry left, as who, what and how much. */
  private static List<String> left(Ran ran, String name) {
    return ((JsonValue.ListValue) members(entry(ran, name)).get("exceeded").value())
        .items().stream()
            .map(
                o ->
                    text(o, "by")
                        + " "
                        + text(o, "quantity")
                        + " "
                        + ((JsonValue.NumberValue) members(o).get("value").value()).value())
            .toList();
  }

  private static JsonValue entry(Ran ran, String name) {
    return ran.list("sources").stream()
        .filter(e -> text(e, "name").equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no entry " + name));
  }

  private static Set<String> names(Ran ran) {
    return ran.list("sources").stream().map(e -> text(e, "name")).collect(Collectors.toSet());
  }

  private static Map<String, JsonValue.Member> members(JsonValue object) {
    return ((JsonValue.ObjectValue) object).members();
  }

  private static String text(JsonValue object, String name) {
    return ((JsonValue.TextValue) members(object).get(name).value()).text();
  }

  private Ran run(List<String> command, String... more) throws IOException {
    List<String> args = new ArrayList<>(command);
    if (!command.contains("--section")
        && Set.of("check", "soak", "schedule", "plan", "face").contains(command.get(0))) {
      args.add(Files.writeString(folder.resolve("traced.json"), BILLET).toString());
    }
    if (Set.of("soak", "schedule", "plan", "face").contains(command.get(0))) {
      args.addAll(List.of("--samples", "2"));
    }
    if (command.get(0).equals("plan")) {
      args.addAll(List.of("--out", folder.resolve("out").toString()));
    }
    if (command.get(0).equals("face")) {
      args.addAll(List.of("--out", folder.resolve("face.png").toString(), "--replace"));
    }
    args.addAll(Arrays.asList(more));
    return Ran.run(args.toArray(String[]::new));
  }
}
