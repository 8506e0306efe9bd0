package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Ran;

/** Whoever is asked from which heat to harden a steel, the answer is the same. */
@Tag("slow")
class HardeningHeatTest {
  private static final Pattern HARDENED = Pattern.compile("Hardened from (\\d+) C, ");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"C1.2 Mn0.4", "C0.85 Mn0.7 Cr0.3", "C0.5 Mn0.8 Si0.3", "1095", "W2"})
  void steelsPairAndScheduleSayOneHeat(String steel) throws IOException {
    double alone = Ran.run("steels", steel, "--json").number("hardenC");
    assertEquals(alone, inPair(steel));
    assertEquals(alone, inSchedule(steel));
  }

  private static double inPair(String steel) {
    Ran pair = Ran.run("pair", steel, steel, "--units", "metric", "--json");
    Matcher heat = HARDENED.matcher(pair.out());
    assertTrue(heat.find(), pair.out());
    return Double.parseDouble(heat.group(1));
  }

  /** Welded once, so short that it keeps its carbon. */
  private double inSchedule(String steel) throws IOException {
    Path billet =
        Files.writeString(
            folder.resolve("plain.json"),
            """
            { "name": "Plain",
              "stack": { "layers": 2, "steels": ["%s", "%s"], "thickness": "8 mm",
                         "width": "40 mm", "length": "200 mm" },
              "steps": [ { "do": "weld", "faces": "covered",
                           "heats": [{ "at": "1100 C", "for": "1 min" }] } ] }
            """
                .formatted(steel, steel));
    return Ran.run("schedule", billet.toString(), "--samples", "2", "--json")
        .number("blade.hardenC");
  }
}
