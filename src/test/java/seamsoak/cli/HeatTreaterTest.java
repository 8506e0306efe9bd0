package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.JsonValue;
import seamsoak.support.Ran;

/**
 * What a heat treater would object to in a whole schedule, read from the answer alone. Common
 * practice, no source, where a test names none.
 */
@Tag("slow")
class HeatTreaterTest {
  @TempDir private Path folder;

  /** Layers welded in a closed stack, drawn to 8 mm, and ground to a blade of some thickness. */
  private Ran schedule(String steels, int layers, String blade, String more) throws IOException {
    return schedule(steels, layers, "8 mm", blade, more);
  }

  private Ran schedule(String steels, int layers, String drawn, String blade, String more)
      throws IOException {
    Path billet =
        Files.writeString(
            folder.resolve("billet.json"),
            """
            { "units": "metric",
              "stack": { "layers": %d, "steels": ["%s"], "thickness": "4 mm", "width": "40 mm",
                         "length": "150 mm" },
              "steps": [
                { "do": "weld", "faces": "sealed",
                  "heats": [{ "at": "1130 C", "for": "5 min", "times": 3 }] },
                { "do": "draw", "thickness": "%s", "width": "42 mm",
                  "heats": [{ "at": "1050 C", "for": "3 min", "times": 4 }] } ],
              "blade": { "thickness": "%s", "hardness": "60 HRC" }%s }
            """
                .formatted(layers, steels.replace(" ", "\", \""), drawn, blade, more));
    Ran ran = Ran.run("schedule", billet.toString(), "--samples", "0", "--json");
    assertEquals(0, ran.code(), ran.err());
    return ran;
  }

  private static List<Integer> steps(Ran ran, String kind) {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < ran.list("steps").size(); i++) {
      if (ran.text("steps." + i + ".kind").equals(kind)) {
        all.add(i);
      }
    }
    return all;
  }

  private static double lastHeat(Ran ran, String kind) {
    List<Integer> all = steps(ran, kind);
    return ran.number("steps." + all.get(all.size() - 1) + ".temperatureC");
  }

  /** The last heat before the quench is not the hottest, nor does it begin to change the jacket. */
  @Test
  void besideStainlessItHardensNoHotterThanItsLastCycle() throws IOException {
    Ran ran = schedule("410 1095", 3, "3.5 mm", "");
    assertTrue(ran.number("blade.hardenC") <= lastHeat(ran, "refine"), ran.out());
    for (int i = 0; i < ran.list("after").size(); i++) {
      if (ran.text("after." + i + ".step").startsWith("refine")) {
        assertEquals("410", ran.text("after." + i + ".metals.0.steel"));
        assertEquals("annealed", ran.text("after." + i + ".metals.0.structureKind"));
      }
    }
  }

  /** Skin is soft by its carbon, in chromium steel too; what stays soft anyway has none. */
  @Test
  void skinOfChromiumSteelIsSoftByItsCarbon() throws IOException {
    Ran hard = schedule("1018 D2", 3, "4 mm", "");
    assertTrue(hard.number("after.0.sideSoftMm") < 0.7 * hard.number("after.0.sideSkinMm"));
    Ran jacket = schedule("416 1095", 3, "3.5 mm", "");
    assertTrue(jacket.number("after.0.sideSoftMm") < 0.7 * jacket.number("after.0.sideSkinMm"));
  }

  /** Where both are quenched in water no sentence says that the deeper one forbids it. */
  @Test
  void whatIsQuenchedInWaterMayBe() throws IOException {
    Ran ran =
        schedule(
            "C1.0 C0.6,Mn1.2,Ni0.5",
            5,
            "14 mm",
            "12 mm",
            ", \"quenchants\": [{ \"kind\": \"water\" }]");
    assertEquals("water", ran.text("blade.quenchant"));
    assertEquals("deep-beside-shallow", ran.text("conflicts.0.kind"));
    assertTrue(ran.text("conflicts.0.todo").contains("water is the bath of both"), ran.out());
  }

  /** No forge holds a temper for hours; an oven ends at 260 C, and the answer says so. */
  @Test
  void nothingIsTemperedInAForge() throws IOException {
    Ran ran =
        schedule("5160", 3, "5 mm", ", \"equipment\": { \"forge\": \"gas\", \"kiln\": \"none\" }");
    Ran spring =
        Ran.run(
            "schedule",
            Files.writeString(
                    folder.resolve("spring.json"),
                    Files.readString(folder.resolve("billet.json")).replace("60 HRC", "50 HRC"))
                .toString(),
            "--samples",
            "0",
            "--json");
    for (Ran each : List.of(ran, spring)) {
      for (int i : steps(each, "temper")) {
        assertEquals("oven", each.text("steps." + i + ".in"));
        assertTrue(each.number("steps." + i + ".temperatureC") <= 260);
      }
    }
    assertTrue(spring.out().contains("wants a hotter temper than an oven holds"), spring.out());
  }

  /**
   * EN ISO 4957: 45NiCrMo16 is annealed at 610 to 650 C, from memory. No kiln falls so slowly from
   * above Ac1 that it changes.
   */
  @Test
  void nickelToolSteelIsAnnealedBelowItsCriticalRange() throws IOException {
    Ran ran = schedule("45NiCrMo16 1084", 5, "5 mm", "");
    int anneal = steps(ran, "anneal").get(0);
    assertTrue(ran.number("steps." + anneal + ".temperatureC") <= 650, ran.out());
    assertEquals("sub-critical-anneal", ran.text("steps." + anneal + ".doingKind"));
  }

  /**
   * S7 hardens from 940 C (its sheet): from the heat of a carbon steel no hardness is told of it.
   */
  @Test
  void shockSteelIsNotToldHardFromTheHeatOfCarbonSteel() throws IOException {
    Ran ran = schedule("S7 1084", 5, "5 mm", "");
    assertEquals(1, ran.list("blade.steels").size());
    assertEquals("1084", ran.text("blade.steels.0.steel"));
    assertTrue(ran.out().contains("S7 is hard from this heat in part at most"), ran.out());
  }

  /**
   * What is austenite at every heat has no critical temperatures, and D2 no Ms of all its carbon.
   */
  @Test
  void whatDoesNotChangeHasNoCriticalTemperature() throws IOException {
    Ran stainless = schedule("304 1095", 3, "3.5 mm", "");
    assertEquals("304", stainless.text("critical.0.steel"));
    for (String name : List.of("ac1C", "upperC", "msC", "magnetC")) {
      assertTrue(stainless.at("critical.0." + name) instanceof JsonValue.NullValue, name);
    }
    Ran tool = schedule("1018 D2", 3, "4 mm", "");
    assertTrue(tool.at("critical.1.msC") instanceof JsonValue.NullValue);
    assertTrue(tool.number("critical.1.ac1C") > 780);
    Ran nickel = schedule("1084 Ni200", 3, "4 mm", "");
    assertTrue(nickel.out().contains("Ni200 does not pull at any such heat"), nickel.out());
  }

  /** A long anneal takes carbon out of one steel into another; whether it comes back is told. */
  @Test
  void carbonThatGathersInAnAnnealIsTold() throws IOException {
    Ran ran = schedule("A2 O1", 15, "5 mm", "");
    String remarks = ran.list("remarks").toString();
    assertTrue(remarks.contains("carbon goes out of O1"), remarks);
    assertTrue(ran.list("remarkKinds").toString().contains("carbon-gathers"), remarks);
    Ran none = schedule("1084 75Ni8", 3, "5 mm", "");
    assertFalse(none.list("remarkKinds").toString().contains("carbon-gathers"), none.out());
  }

  /** No steel is told harder than the carbon makes it that it is quenched with. */
  @Test
  void hardnessIsOfTheCarbonAtTheQuench() throws IOException {
    Ran ran = schedule("A2 O1", 15, "5 mm", "");
    assertEquals("O1", ran.text("blade.steels.0.steel"));
    double quenched = Double.NaN;
    for (int i = 0; i < ran.list("after").size(); i++) {
      if (ran.text("after." + i + ".step").equals("harden")) {
        quenched = ran.number("after." + i + ".layers.1.meanPct");
      }
    }
    assertTrue(ran.number("blade.steels.0.dissolvedPct") < quenched + 0.05, ran.out());
  }

  /** A range of one heat is one heat, and what is told of lines fits the schedule. */
  @Test
  void sentencesFitTheSchedule() throws IOException {
    Ran ran = schedule("5160", 3, "5 mm", "");
    assertFalse(ran.out().contains("830 C to 830 C"), ran.out());
    Ran soft = schedule("4140", 3, "6 mm", "");
    int temper = steps(soft, "temper").get(0);
    assertTrue(soft.list("steps." + temper + ".checks").toString().contains("a file bites every"));
  }

  /**
   * A soak can be done again, and what it cost cannot be undone: where nothing allowed is sure to
   * do, neither all minutes nor the hottest fire are spent.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 1100 C, 3 min, 1, 30 mm, 1000 C, 30 min, balanced-by-likely",
    "4, 1150 C, 3 min, 2, 25 mm, 1050 C, 5 min, balanced-by-half"
  })
  void aSoakThatMayNotDoIsNotTheLongestAndHottest(
      int high,
      String weld,
      String minutes,
      int times,
      String drawn,
      String draw,
      String most,
      String kind)
      throws IOException {
    Path billet =
        Files.writeString(
            folder.resolve("lines.json"),
            """
            { "units": "metric",
              "stack": { "layers": 9, "steels": ["1084", "75Ni8"], "thickness": "4 mm",
                         "width": "40 mm", "length": "150 mm" },
              "steps": [
                { "do": "weld", "heats": [{ "at": "1180 C", "for": "8 min", "times": 4 }] },
                { "do": "draw", "thickness": "20 mm", "width": "40 mm",
                  "heats": [{ "at": "1100 C", "for": "5 min", "times": 6 }] },
                { "do": "grind", "depth": "0.05 mm" },
                { "do": "restack", "across": 1, "high": %d },
                { "do": "weld", "heats": [{ "at": "%s", "for": "%s", "times": %d }] },
                { "do": "draw", "thickness": "%s", "width": "38 mm",
                  "heats": [{ "at": "%s", "for": "3 min", "times": 3 }] } ],
              "soak": { "most": "%s" } }
            """
                .formatted(high, weld, minutes, times, drawn, draw, most));
    Ran ran = Ran.run("soak", billet.toString(), "--samples", "32", "--json");
    assertEquals(kind, ran.text("recommended.reasonKind"));
    double hottest = ran.number("options." + (ran.list("options").size() - 1) + ".temperatureC");
    assertTrue(
        ran.number("recommended.temperatureC") < hottest
            || ran.number("recommended.minutes") < Integer.parseInt(most.split(" ")[0]),
        ran.text("recommended.reason"));
  }
}
