package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Ran;

/** A terminal shows an answer whole: 30 lines of 80 columns, unless all of it is asked for. */
@Tag("slow")
class TerminalAnswerTest {
  private static final int LINES = 30;
  private static final int COLUMNS = 80;
  private static final String MOSAIC = "alloy-data/billets/mosaic.json";

  @TempDir private Path folder;

  private String[] words(String line, String... more) {
    List<String> words = new ArrayList<>(List.of(line.split(" ")));
    if (line.matches("(check|soak|schedule|plan) .*")) {
      words.set(1, "alloy-data/billets/" + words.get(1) + ".json");
    }
    if (line.matches("(soak|schedule|plan) .*")) {
      words.addAll(List.of("--samples", "2"));
    }
    if (line.startsWith("plan")) {
      words.addAll(List.of("--out", folder.resolve("out").toString()));
    }
    words.addAll(List.of(more));
    return words.toArray(String[]::new);
  }

  /** Without colors, and without the line that tells how far it has come. */
  private static String shown(Ran ran) {
    return ran.out().replaceAll("\u001b\\[[0-9;]*m", "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check mosaic",
        "check san-mai",
        "check galvanized-jacket",
        "soak mosaic",
        "schedule mosaic",
        "plan mosaic",
        "soak san-mai",
        "schedule san-mai",
        "plan san-mai",
        "soak galvanized-jacket",
        "schedule galvanized-jacket",
        "plan galvanized-jacket",
        "kiln alloy-data/billets/mosaic.json alloy-data/billets/san-mai.json --samples 0",
        "pair 1095 D2",
        "pair D2 304",
        "pair 1084 75Ni8",
        "pair scrap 1084",
        "pairs",
        "pairs 1084 75Ni8 O1 304",
        "pairs --all",
        "steels",
        "steels 1084",
        "steels Ni200",
        "decarb 1095 --at 1500C --for 20min",
        "migrate 1095 75Ni8 --layer 2mm --at 1000C --for 30min"
      })
  void anAnswerFitsAScreenAndBeginsAsAllOfItDoes(String line) {
    Ran ran = Ran.onTerminal(words(line));
    String brief = shown(ran);
    // the shell has a prompt of its own, and a command to copy is not broken
    int rows = brief.lines().mapToInt(l -> Math.max(1, (l.length() + COLUMNS - 1) / COLUMNS)).sum();
    assertTrue(rows <= LINES, rows + " lines:\n" + brief);
    brief
        .lines()
        .filter(l -> !l.startsWith("Next: ") && !l.startsWith("Written to "))
        .forEach(l -> assertTrue(l.length() <= COLUMNS, l));
    Ran all = Ran.run(words(line));
    assertEquals(all.code(), ran.code());
    if (!line.matches("steels|pairs --all")) {
      assertEquals(all.out().lines().findFirst(), brief.lines().findFirst());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "soak mosaic",
        "check mosaic",
        "schedule mosaic",
        "plan mosaic",
        "pair 1095 D2",
        "steels 1084"
      })
  void fullShowsWhatAFileGets(String line) {
    String file = Ran.run(words(line)).out();
    assertEquals(file, shown(Ran.onTerminal(words(line, "--full"))));
    assertEquals(file, Ran.run(words(line, "--full")).out());
    assertTrue(file.lines().count() > LINES, file);
    assertFalse(file.contains("--full"), file);
    String brief = shown(Ran.onTerminal(words(line)));
    assertTrue(brief.contains("--full"), brief);
  }

  @Test
  void theWorstCautionsAreShownAndTheRestCounted() {
    String brief = shown(Ran.onTerminal("soak", MOSAIC, "--samples", "2"));
    String cautions = brief.substring(brief.indexOf("Cautions, the worst first"));
    assertTrue(cautions.contains("carbon monoxide"), cautions);
    long said = cautions.lines().filter(l -> l.startsWith("  - ")).count() - 1;
    assertTrue(said >= 1 && said <= 5, cautions);
    assertTrue(cautions.contains("  - and " + (8 - said) + " more"), cautions);
  }

  @Test
  void aPairThatFitsSaysSoInALine() {
    String brief = shown(Ran.onTerminal("pair", "1084", "75Ni8"));
    assertTrue(brief.contains("Fits: all 18 checks."), brief);
    assertFalse(brief.contains("fits: Welding heat"), brief);
  }

  @Test
  void jsonIsTheSameOnATerminal() {
    Ran file = Ran.run("pair", "1095", "D2", "--json");
    assertEquals(file.out(), Ran.onTerminal("pair", "1095", "D2", "--json").out());
  }
}
