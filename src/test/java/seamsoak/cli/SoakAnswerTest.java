package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static seamsoak.support.Ran.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.data.JsonValue;
import seamsoak.support.Ran;

/** What soak answers quickly: without histories, and without the schedule behind it. */
class SoakAnswerTest {
  private static final String STEPS =
      """
      { "name": "Two plates",
        "stack": { "layers": 4, "steels": ["1084"], "thickness": "6 mm", "width": "30 mm",
                   "length": "150 mm" },
        "steps": [ { "do": "weld", "faces": "open",
                     "heats": [{ "at": "1150 C", "for": "5 min" }] },
                   { "do": "draw", "thickness": "15 mm", "width": "30 mm",
                     "heats": [{ "at": "1100 C", "for": "3 min" }] } ]
      """;

  @TempDir private Path folder;

  private String billet(String more) throws IOException {
    return Files.writeString(folder.resolve("billet.json"), STEPS + more + "}").toString();
  }

  /** The middle estimate needs no histories; what rests on them is left out, not made up. */
  @Test
  void withoutHistoriesThereIsNoBand() throws IOException {
    String billet = billet("");
    Ran with = run("soak", billet, "--json", "--samples", "8");
    Ran without = run("soak", billet, "--json", "--samples", "0");
    assertEquals(0, without.code(), without.err());
    for (String key : List.of("name", "seamPct", "farPct", "contrast", "visible")) {
      assertEquals(with.at("lines.0." + key), without.at("lines.0." + key), key);
    }
    assertEquals(with.list("options").size(), without.list("options").size());
    for (int i = 0; i < without.list("options").size(); i++) {
      String option = "options." + i + ".";
      assertEquals(with.number(option + "minutes"), without.number(option + "minutes"));
      assertNone(without.at(option + "minutesLow"));
      assertNone(without.at(option + "minutesHigh"));
    }
    assertEquals(0, without.number("samples"));
    for (String share : List.of("goneAlreadyPct", "goneByScheduleAlonePct", "withinLongestPct")) {
      assertTrue(with.number(share) >= 0);
      assertNone(without.at(share));
    }
    assertEquals("none", without.text("dominant"));
    assertTrue(
        without.number("recommended.minutes") <= with.number("recommended.minutes")
            || without.number("recommended.temperatureC")
                <= with.number("recommended.temperatureC"),
        "the middle is below the cautious end");
    String said = run("soak", billet, "--samples", "0").out();
    assertTrue(said.contains("the likely case alone"), said);
    assertTrue(said.contains("how sure this is cannot be said"), said);
    assertFalse(said.contains("8 of 10"), said);
  }

  private static void assertNone(JsonValue value) {
    assertTrue(value instanceof JsonValue.NullValue, value.toString());
  }

  /** A quench too hot to use stands in the way of hardening and not of the soak before it. */
  @Test
  void aSoakIsNotRefusedForTheQuench() throws IOException {
    String billet =
        billet(
            ", \"quenchants\": [{ \"kind\": \"oil-fast\", \"at\": \"150 C\", \"flash\": \"170 C\" }]");
    Ran soak = run("soak", billet, "--samples", "2", "--json");
    assertEquals(0, soak.code(), soak.err());
    assertEquals(List.of(), soak.list("hardStops"));
    assertEquals(4, run("schedule", billet, "--samples", "2").code());
  }

  /** What soak and schedule both say of the metal after the soak is the same. */
  @Test
  void soakAndScheduleAgree() throws IOException {
    String billet = billet("");
    String row = "  soak ";
    Ran soak = run("soak", billet, "--samples", "8");
    assertTrue(soak.out().contains(row), soak.out());
    assertEquals(
        carbonAfterSoak(soak),
        carbonAfterSoak(
            run("plan", billet, "--samples", "8", "--out", folder.resolve("charts").toString())));
  }

  private static String carbonAfterSoak(Ran ran) {
    return ran.out()
        .lines()
        .filter(l -> l.matches("  soak +[0-9.]+"))
        .map(l -> l.replaceAll(" +", " "))
        .findFirst()
        .orElseThrow(() -> new AssertionError(ran.out()));
  }

  /** A soak after one that was done is told with what both come to. */
  @Test
  void aSecondSoakIsToldInAll(@TempDir Path folder) throws IOException {
    String text =
        Files.readString(Path.of("alloy-data/billets/mosaic.json"))
            .replace(
                "[{ \"at\": \"2000 F\", \"for\": \"2 min\" }] }",
                "[{ \"at\": \"2000 F\", \"for\": \"2 min\" }] }, { \"do\": \"soak\", \"heats\":"
                    + " [{ \"at\": \"1995 F\", \"for\": \"15 min\","
                    + " \"done\": [{ \"at\": \"1950 F\", \"for\": \"9 min\" }] }] }");
    Path file = Files.writeString(folder.resolve("b.json"), text);
    Ran ran = Ran.run("soak", file.toString(), "--samples", "0", "--json");
    assertEquals(9, ran.number("soaked.minutes"), 1e-9);
    double more = ran.number("recommended.minutes");
    String said = Ran.run("soak", file.toString(), "--samples", "0", "--units", "us").out();
    String all = said.replaceAll("\\s+", " ");
    assertTrue(all.contains("Soaked since it was last forged: 9 min, at 1950 F at most."), all);
    assertTrue(more > 0 && all.contains(Math.round(9 + more) + " min in all."), all);
    assertTrue(all.contains("The 30 min allowed are for one soak"), all);
    Ran none = Ran.run("soak", "alloy-data/billets/mosaic.json", "--samples", "0");
    assertFalse(none.out().contains("last forged"), none.out());
  }
}
