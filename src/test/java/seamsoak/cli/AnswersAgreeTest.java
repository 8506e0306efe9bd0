package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.DataFolder;
import seamsoak.data.JsonValue;
import seamsoak.property.QuenchedSteel;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.support.Ran;

/**
 * Every number that {@code steels}, {@code pair} and {@code schedule} share, read from their
 * answers for each grade by itself, in a shop that has every bath.
 */
@Tag("slow")
class AnswersAgreeTest {
  private static final Pattern HARDNESS =
      Pattern.compile("as quenched (\\d+) HRC at a thin edge, (\\d+) in the middle");
  private static final Pattern EVENED = Pattern.compile("as quenched (\\d+) HRC and");

  @TempDir private Path folder;

  static Stream<String> grades() {
    return SteelTable.load(DataFolder.packed()).steels().stream().map(Steel::id);
  }

  private static boolean scheduled(String grade) {
    Steel steel = SteelTable.load(DataFolder.packed()).find(grade).orElseThrow();
    return steel.heatTreatment().harden().isPresent() && QuenchedSteel.reaches(steel.analysis());
  }

  @ParameterizedTest
  @MethodSource("grades")
  void steelsAndPairAgree(String grade) {
    Ran steel = Ran.run("steels", grade, "--json");
    Pair pair = new Pair(Ran.run("pair", grade, grade, "--section", "5mm", "--json"));
    if (known(steel, "ac1C")) {
      assertEquals(steel.number("ac1C.value"), pair.first("ac1"), 1e-9);
      assertEquals(steel.number("ac3OrAccmC.value"), pair.first("upper-critical"), 1e-9);
      assertTrue(pair.reason("upper-critical").startsWith(steel.text("upper") + " of "));
    }
    assertEquals(known(steel, "blade"), pair.has("quench"));
    if (!known(steel, "blade")) {
      return;
    }
    assertEquals(known(steel, "msC"), pair.has("ms"));
    if (known(steel, "msC")) {
      assertEquals(steel.number("msC.value"), pair.first("ms"), 1e-9);
    }
    assertEquals(steel.number("ranges.harden.lowC"), pair.range("hardening-window").get(0), 1e-9);
    assertEquals(steel.number("ranges.harden.highC"), pair.range("hardening-window").get(1), 1e-9);
    assertEquals(
        Math.min(500, steel.number("blade.idealDiameterMm")), pair.first("hardenability"), 1e-9);
    assertEquals(severity(steel.text("blade.quenchant")), pair.first("quench"), 1e-9);
    assertTrue(pair.reason("quench").contains(steel.text("blade.quenchantName")));
    Matcher hrc = HARDNESS.matcher(pair.reason("quench"));
    assertEquals(known(steel, "blade.edgeHrc"), hrc.find());
    if (known(steel, "blade.edgeHrc")) {
      assertEquals(Math.round(steel.number("blade.edgeHrc")), Long.parseLong(hrc.group(1)));
      assertEquals(Math.round(steel.number("blade.coreHrc")), Long.parseLong(hrc.group(2)));
      Matcher evened = EVENED.matcher(pair.reason("evened-carbon"));
      assertTrue(evened.find(), pair.reason("evened-carbon"));
      assertTrue(Long.parseLong(evened.group(1)) >= Math.round(steel.number("blade.edgeHrc")));
    }
  }

  static Stream<String> hardened() {
    return grades().filter(AnswersAgreeTest::scheduled);
  }

  @ParameterizedTest
  @MethodSource("hardened")
  void steelsAndScheduleAgree(String grade) throws IOException {
    Ran steel = Ran.run("steels", grade, "--json");
    Ran schedule = schedule(grade);
    String critical = "critical.0.";
    assertEquals(steel.number("ac1C.value"), schedule.number(critical + "ac1C"), 1e-3);
    assertEquals(steel.number("ac3OrAccmC.value"), schedule.number(critical + "upperC"), 1e-3);
    assertEquals(steel.text("upper"), schedule.text(critical + "upper"));
    assertEquals(known(steel, "blade"), known(schedule, "blade"));
    if (!known(steel, "blade")) {
      return;
    }
    assertEquals(steel.number("hardenC"), schedule.number("blade.hardenC"), 1e-9);
    assertEquals(steel.text("blade.quenchant"), schedule.text("blade.quenchant"));
    assertEquals(steel.text("blade.quenchantName"), schedule.text("blade.quenchantName"));
    String blade = "blade.steels.0.";
    assertEquals(steel.number("dissolvedCarbonPct"), schedule.number(blade + "dissolvedPct"), 1e-5);
    assertEquals(steel.number("msC.value"), schedule.number(blade + "msC"), 1e-2);
    // the grain after heats of its own may be some thousandths of a number coarser than refined
    double diameter = steel.number("blade.idealDiameterMm");
    assertEquals(diameter, schedule.number(blade + "idealDiameterMm"), 5e-4 * diameter);
    assertEquals(steel.number("blade.edgeHrc"), schedule.number(blade + "edgeHrc"), 1e-3);
    assertEquals(steel.number("blade.coreHrc"), schedule.number(blade + "coreHrc"), 0.05);
    assertTempered(steel, temper(schedule));
  }

  /** Within one of the ranges that are told as published. */
  private static void assertTempered(Ran steel, double celsius) {
    List<String> ranges =
        steel.names("ranges").stream().filter(n -> n.toLowerCase().endsWith("temper")).toList();
    assertTrue(
        ranges.stream()
            .anyMatch(
                n ->
                    celsius >= steel.number("ranges." + n + ".lowC")
                        && celsius <= steel.number("ranges." + n + ".highC")),
        celsius + " in " + ranges);
  }

  private static double temper(Ran schedule) {
    for (int i = 0; i < schedule.list("steps").size(); i++) {
      if (schedule.text("steps." + i + ".step").equals("temper 1")) {
        return schedule.number("steps." + i + ".temperatureC");
      }
    }
    throw new AssertionError("no temper");
  }

  /** A sheet as it was bought: the carbon of the table, and as wide as the plate of the others. */
  private Ran schedule(String grade) throws IOException {
    String baths =
        DataFolder.packed().csv("quenchants.csv").rows().stream()
            .map(r -> "{ \"kind\": \"" + r.text("id") + "\" }")
            .collect(Collectors.joining(", "));
    Path billet =
        Files.writeString(
            folder.resolve("bar.json"),
            "{ \"stack\": { \"layers\": 1, \"steels\": [\""
                + grade
                + "\"], \"thickness\": \"9 mm\", \"width\": \"2000 mm\", \"length\": \"120 mm\" },"
                + " \"steps\": [{ \"do\": \"grind\", \"depth\": \"0.1 mm\" }],"
                + " \"blade\": { \"thickness\": \"5 mm\", \"width\": \"1990 mm\" },"
                + " \"quenchants\": ["
                + baths
                + "] }");
    Ran ran = Ran.run("schedule", billet.toString(), "--samples", "0", "--json");
    assertEquals(0, ran.code(), ran.err());
    return ran;
  }

  private static boolean known(Ran ran, String path) {
    return !(ran.at(path) instanceof JsonValue.NullValue);
  }

  private static double severity(String quenchant) {
    return DataFolder.packed().csv("quenchants.csv").rows().stream()
        .filter(r -> r.text("id").equals(quenchant))
        .map(r -> r.required("severity_per_in"))
        .findFirst()
        .orElseThrow();
  }

  /** The checks of a pair by name. */
  private record Pair(Ran ran, Map<String, Integer> at) {
    Pair(Ran ran) {
      this(ran, places(ran));
    }

    private static Map<String, Integer> places(Ran ran) {
      List<String> names = new ArrayList<>();
      for (int i = 0; i < ran.list("checks").size(); i++) {
        names.add(ran.text("checks." + i + ".name"));
      }
      return names.stream().collect(Collectors.toMap(n -> n, names::indexOf));
    }

    boolean has(String check) {
      return at.containsKey(check);
    }

    double first(String check) {
      return ran.number("checks." + at.get(check) + ".first");
    }

    String reason(String check) {
      return ran.text("checks." + at.get(check) + ".reason");
    }

    List<Double> range(String check) {
      return ran.list("checks." + at.get(check) + ".firstRange").stream()
          .map(v -> ((JsonValue.NumberValue) v).value())
          .toList();
    }
  }
}
