package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Ran;

/** {@code schedule} of two steels that come without a billet. */
class ScheduleOfSteelsTest {
  private static final String BAR =
      "schedule 1095 75Ni8 --layer 1mm,0.5mm --section 6mm --json --samples 0";

  @TempDir private Path folder;

  private static Ran run(String line) {
    return Ran.run(line.split(" "));
  }

  @Test
  void itTellsWhatTheyAreTakenFor() {
    Ran ran = run(BAR);
    assertEquals(0, ran.code(), ran.err());
    assertEquals("1095 and 75Ni8", ran.text("billet"));
    assertEquals(8, ran.number("taken.layers"));
    assertEquals(6, ran.number("taken.thicknessMm"), 1e-9);
    String said = run(BAR.replace("--json", "--units us")).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("Taken as 8 layers, 0.236 in thick"), said);
    assertTrue(said.contains("write your own billet's file"), said);
  }

  @Test
  void nothingIsSoaked() {
    Ran ran = run(BAR.replace("75Ni8", "1018"));
    assertEquals(0, ran.code(), ran.err());
    int steps = ran.list("steps").size();
    assertTrue(steps >= 8, steps + " steps");
    for (int i = 0; i < steps; i++) {
      assertTrue(!ran.text("steps." + i + ".kind").equals("soak"), "step " + i);
    }
  }

  /** The same as of a file that says what is taken. */
  @Test
  void itIsTheScheduleOfSuchABillet() throws IOException {
    Ran steels = run(BAR);
    String text =
        """
        { "stack": { "layers": 8, "steels": ["1095", "75Ni8"], "thickness": ["1 mm", "0.5 mm"],
            "width": "32 mm", "length": "150 mm" },
          "steps": [ { "do": "weld", "faces": "sealed", "outside": "sealed",
            "heats": [{ "at": "%s C", "for": "5 min" }] } ] }
        """
            .formatted(steels.number("taken.weldC"));
    Path file = Files.writeString(folder.resolve("bar.json"), text);
    Ran billet = Ran.run("schedule", file.toString(), "--samples", "0", "--json");
    List<String> same = List.of("conflicts", "critical", "blade", "program", "after");
    for (String part : same) {
      assertEquals(flat(billet, part), flat(steels, part), part);
    }
  }

  /** Without the places at which things stand. */
  private static String flat(Ran ran, String part) {
    return ran.at(part).toString().replaceAll("place=Place\\[[^]]*]", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "two steels need --layer and --section | 1095 75Ni8",
        "two steels need --layer and --section | 1095 75Ni8 --layer 1mm",
        "--layer and --section go with two steels | billet.json --layer 1mm",
        "--section is thinner than one layer of each | 1095 75Ni8 --layer 4mm --section 6mm",
        "there is no steel '1094' | 1094 75Ni8 --layer 1mm --section 6mm",
        "there is no steel '75Ni9'; did you mean '75Ni8'? | 1095 75Ni9 --layer 1mm --section 6mm",
        "'6' has no unit | 1095 75Ni8 --layer 1mm --section 6",
        "--program is of a billet | 1095 75Ni8 --layer 1mm --section 6mm --program k.csv",
      })
  void whatDoesNotGoTogetherIsSaid(String said, String words) {
    Ran ran = run("schedule " + words);
    assertEquals(2, ran.code(), ran.err());
    assertEquals("", ran.out());
    assertTrue(ran.err().replaceAll("\\s+", " ").contains(said), ran.err());
  }
}
