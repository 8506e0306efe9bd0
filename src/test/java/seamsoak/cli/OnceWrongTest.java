package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Ran;

/**
 * What answers once had wrong, asked for through the command line alone, so that any version can be
 * asked. Common practice, no source, where a test names none.
 */
@Tag("slow")
class OnceWrongTest {
  private static final Pattern MILLIMETRES = Pattern.compile("Grind ([0-9.]+) mm");

  @TempDir private Path folder;

  private Ran schedule(String steels, String more, String... options) throws IOException {
    Path billet = folder.resolve("billet.json");
    Files.writeString(billet, billet(steels, "1130 C", "1050 C", more));
    String[] words = {"schedule", billet.toString(), "--samples", "0", "--units", "metric"};
    String[] all = Arrays.copyOf(words, words.length + options.length);
    System.arraycopy(options, 0, all, words.length, options.length);
    return Ran.run(all);
  }

  private static String billet(String steels, String weld, String draw, String more) {
    return """
        { "stack": { "layers": 3, "steels": ["%s"], "thickness": "4 mm", "width": "40 mm",
                     "length": "150 mm" },
          "steps": [
            { "do": "weld", "faces": "sealed",
              "heats": [{ "at": "%s", "for": "5 min", "times": 3 }] },
            { "do": "draw", "thickness": "8 mm", "width": "42 mm",
              "heats": [{ "at": "%s", "for": "3 min", "times": 4 }] } ]%s }
        """
        .formatted(steels.replace(" ", "\", \""), weld, draw, more);
  }

  private static String blade(String thickness, String hardness) {
    return ", \"blade\": { \"thickness\": \""
        + thickness
        + "\", \"hardness\": \""
        + hardness
        + "\" }";
  }

  /** The heat of the last step whose name begins so. */
  private static double heat(Ran ran, String step) {
    double heat = Double.NaN;
    for (int i = 0; i < ran.list("steps").size(); i++) {
      if (ran.text("steps." + i + ".step").startsWith(step)) {
        heat = ran.number("steps." + i + ".temperatureC");
      }
    }
    return heat;
  }

  /** Oil steels do not go into water, nor between plates where there is oil. */
  @ParameterizedTest
  @CsvSource({
    "1084 75Ni8, 4.5 mm, oil-fast water, oil-fast",
    "1095 75Ni8, 3 mm, oil-fast water, oil-fast",
    "5160 1095, 4.5 mm, oil-fast water, oil-fast",
    "O1 L6, 3.5 mm, oil-medium plates, oil-medium"
  })
  void noWaterForOilSteels(String steels, String thickness, String baths, String taken)
      throws IOException {
    String quenchants =
        ", \"quenchants\": [{ \"kind\": \"" + baths.replace(" ", "\" }, { \"kind\": \"") + "\" }]";
    Ran ran = schedule(steels, blade(thickness, "60 HRC") + quenchants, "--json");
    assertEquals(taken, ran.text("blade.quenchant"));
  }

  /** The skin of the sides is not ground off the flats, nor is what still hardens. */
  @Test
  void flatsLoseTheirOwnSkin() throws IOException {
    Matcher off = MILLIMETRES.matcher(schedule("1084 75Ni8", "").out().replaceAll("\\s+", " "));
    assertTrue(off.find());
    assertTrue(Double.parseDouble(off.group(1)) < 0.5, off.group());
  }

  /** 1084 is burnt long before 1400 C and molten at 1550 C. */
  @ParameterizedTest
  @CsvSource({"1550 C, 1050 C", "1130 C, 1400 C"})
  void heatsThatMeltAreRefused(String weld, String draw) throws IOException {
    Path billet =
        Files.writeString(folder.resolve("burnt.json"), billet("1084 75Ni8", weld, draw, ""));
    Ran ran = Ran.run("soak", billet.toString(), "--samples", "0");
    assertNotEquals(0, ran.code(), ran.out());
  }

  /** What can hurt at the grinder and at the etch is printed. */
  @Test
  void cautionsOfTheBenchArePrinted() throws IOException {
    String page = schedule("1084 75Ni8", blade("4 mm", "60 HRC")).out().replaceAll("\\s+", " ");
    assertTrue(page.contains("Steel dust burns"), page);
    assertTrue(page.contains("Ferric chloride burns the eyes"), page);
  }

  /** Spring grades are tempered as blades where a blade's hardness is asked. */
  @ParameterizedTest
  @ValueSource(strings = {"55Cr3", "9260", "56Si7"})
  void springSteelIsTemperedAsABlade(String steel) throws IOException {
    Ran ran = schedule(steel, blade("5 mm", "59 HRC"), "--json");
    assertTrue(heat(ran, "temper") <= 315, ran.out());
  }

  /** One Ac1, and no anneal called sub-critical above it. */
  @ParameterizedTest
  @ValueSource(strings = {"9260", "56Si7", "S5", "W2", "80CrV2"})
  void thereIsOneAc1(String steel) throws IOException {
    Ran ran = schedule(steel, blade("5 mm", "59 HRC"), "--json");
    double ac1 = Ran.run("steels", steel, "--json").number("ac1C.value");
    assertEquals(ac1, ran.number("critical.0.ac1C"), 1);
    if (ran.out().contains("ub-critical anneal at")) {
      assertTrue(heat(ran, "anneal") < ac1, ran.out());
    }
  }

  /** Hardened from far below its Ac3 9260 keeps ferrite. */
  @Test
  void hardeningBelowAc3IsTold() throws IOException {
    Ran ran = schedule("9260 1095", blade("4 mm", "60 HRC"), "--json");
    assertTrue(ran.number("blade.hardenC") < 830);
    assertTrue(ran.list("conflicts").toString().contains("ferrite"), ran.out());
  }

  /** Nothing after the cycles is hotter than they were. */
  @ParameterizedTest
  @ValueSource(strings = {"4340 1095", "5160 1095", "C67S"})
  void theCyclesAreTheLastToMakeGrains(String steels) throws IOException {
    Ran ran = schedule(steels, blade("4 mm", "58 HRC"), "--json");
    assertTrue(heat(ran, "anneal") < heat(ran, "refine"), ran.out());
    assertTrue(ran.number("blade.hardenC") <= heat(ran, "refine"), ran.out());
  }

  /** Vanadium in carbide does not harden: W2 is as shallow as W1. */
  @Test
  void vanadiumInCarbideDoesNotCount() throws IOException {
    Ran ran = schedule("W2", blade("5 mm", "60 HRC"), "--json");
    assertTrue(ran.number("blade.steels.0.idealDiameterMm") < 20, ran.out());
  }

  /** Disputed or not, O1 and L6 in 5 mm may harden in air, and the pair says so. */
  @Test
  void whatMayHardenInAirIsNotDenied() {
    String page = Ran.run("pair", "O1", "L6", "--json").out();
    assertTrue(page.contains("in still air when"), page);
    assertFalse(page.contains("neither does"), page);
  }

  /** No gas forge holds a dull red for an hour. */
  @Test
  void aForgeHoldsNoDullRed() throws IOException {
    String shop = ", \"equipment\": { \"forge\": \"gas\", \"kiln\": \"none\" }";
    Ran ran = schedule("1084 75Ni8", blade("4 mm", "60 HRC") + shop, "--json");
    for (int i = 0; i < ran.list("steps").size(); i++) {
      String step = "steps." + i + ".";
      if (ran.text(step + "in").equals("forge")) {
        assertTrue(ran.number(step + "holdMinutes") <= 15, ran.text(step + "step"));
      }
    }
  }

  /** EN 10083-3: 51CrV4 holds 0.47 to 0.55 % C; 9260 hardens near 870 C (from memory). */
  @Test
  void springSteelsHaveTheHeatsOfTheirSheets() {
    Ran ran = Ran.run("steels", "9260", "--json");
    assertTrue(ran.number("ranges.harden.highC") >= 870, ran.out());
    assertTrue(ran.number("ranges.harden.lowC") >= 845, ran.out());
  }

  /** A thin edge cools faster than the face of the spine, so it is never the softer of the two. */
  @ParameterizedTest
  @ValueSource(strings = {"pure-iron 1095", "1095 75Ni8", "1084 75Ni8", "5160 1084"})
  void aThinEdgeIsNotSofterThanTheSpinesFace(String steels) throws IOException {
    Ran ran = schedule(steels, blade("4.5 mm", "60 HRC"), "--json");
    int count = ran.list("blade.steels").size();
    assertTrue(count > 0, "steels that harden");
    for (int i = 0; i < count; i++) {
      String steel = "blade.steels." + i + ".";
      assertTrue(
          ran.number(steel + "edgeHrc") >= ran.number(steel + "faceHrc") - 0.05,
          ran.text(steel + "steel"));
    }
  }

  /** Values of Ac3 on heating that steels.csv has from data sheets. */
  @ParameterizedTest
  @CsvSource({"5160, 766", "55Cr3, 775", "6150, 790", "51CrV4, 790", "1060, 760"})
  void theUpperTemperatureOnHeatingLiesWithinWhatIsTold(String steel, double celsius) {
    Ran ran = Ran.run("steels", steel, "--json");
    assertTrue(ran.number("ac3OrAccmC.low") < celsius, steel);
    assertTrue(ran.number("ac3OrAccmC.high") > celsius, steel);
  }

  /** A soak does not spend all that is allowed because it is allowed. */
  @Test
  void theDemosSoakDoesNotTakeAllThatIsAllowed() {
    Ran ran = Ran.run("soak", "alloy-data/billets/mosaic.json", "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals(30, ran.number("mostMinutes"));
    assertTrue(ran.number("recommended.minutes") <= 24, ran.at("recommended").toString());
  }

  /** Dangers that were not told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "W2 1018 | water | A blade that cracks in water or brine can throw pieces",
        "1084 75Ni8 | canola | A fire of vegetable oil flares up again",
        "A2 1018 | oil-fast | Dust of vermiculite and of ash harms the lungs"
      })
  void cautionsThatWereMissing(String steels, String bath, String caution) throws IOException {
    String shop =
        ", \"equipment\": { \"kiln\": \"none\" }, \"quenchants\": [{ \"kind\": \"" + bath + "\" }]";
    String said = schedule(steels, shop, "--full").out().replaceAll("\\s+", " ");
    assertTrue(said.contains(caution), said);
  }
}
