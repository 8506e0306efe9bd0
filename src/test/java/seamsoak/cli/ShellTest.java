package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Ran;

/** Color, and the completion of words. */
class ShellTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "xterm, '', true, true",
    "xterm, '', false, false",
    "xterm, 1, true, false",
    "dumb, '', true, false",
    "xterm, 0, true, false"
  })
  void colorIsForTerminalsThatWantIt(String term, String no, boolean terminal, boolean on) {
    assertEquals(on, Colors.of(Map.of("TERM", term, "NO_COLOR", no), terminal).on());
  }

  @Test
  void theAnswerAndTheNextCommandStandOut() {
    String plain = "Soak.\nWhy: so.\n\ntable\n\nNext: plan\n";
    String esc = "\u001b[";
    assertEquals(
        esc
            + "1mSoak."
            + esc
            + "0m\n"
            + esc
            + "1mWhy: so."
            + esc
            + "0m\n\ntable\n\n"
            + esc
            + "1mNext: plan"
            + esc
            + "0m\n",
        new Colors(true).answer(plain));
    assertEquals(plain, new Colors(false).answer(plain));
    assertEquals(
        esc + "1mSoak." + esc + "0m\n\n" + esc + "1;31mCautions" + esc + "0m\n  - Stop.\n",
        new Colors(true).answer("Soak.\n\nCautions\n  - Stop.\n"));
  }

  @Test
  void answersThatNobodyWatchesHaveNoColor() {
    Ran ran = Ran.run("steels");
    assertFalse(ran.out().contains("\u001b"));
  }

  @ParameterizedTest
  @CsvSource({
    "'seamsoak sche', schedule",
    "'seamsoak che', check",
    "'seamsoak check --un', --units",
    "'seamsoak steels 80Cr', 80CrV2",
    "'seamsoak pair O', O1",
    "'seamsoak pair O1 75N', 75Ni8",
    "'seamsoak pairs 52', 52100",
    "'seamsoak decarb 1084 --edge ', covered",
    "'seamsoak plan --re', --replace",
    "'seamsoak soak --fu', --full"
  })
  void theTabKeyCompletes(String typed, String whole) throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
    Ran ran = Ran.run("completion");
    assertEquals(0, ran.code());
    Path script = Files.writeString(folder.resolve("completion.sh"), ran.out());
    String[] words = (typed + "|").split(" ");
    String ask =
        "source '"
            + script
            + "'; COMP_WORDS=("
            + typed
            + "); COMP_CWORD="
            + (words.length - 1)
            + "; COMP_LINE='"
            + typed
            + "'; COMP_POINT="
            + typed.length()
            + "; _complete_seamsoak; printf '%s\\n' \"${COMPREPLY[@]}\"";
    Process bash =
        new ProcessBuilder("/bin/bash", "--norc", "-c", ask).redirectErrorStream(true).start();
    String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    bash.waitFor();
    assertTrue(said.lines().map(String::strip).anyMatch(whole::equals), said);
  }
}
