package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.cli.Child;

/**
 * Killed at random moments while it writes, the program leaves nothing that is not whole; {@code
 * -Dkills=50} sets how often.
 */
@Tag("long")
class KilledTest {
  private static final int KILLS = Integer.getInteger("kills", 10);
  private static final int LATEST_MILLIS = 60;

  @TempDir private Path folder;

  @Test
  void everyFileIsWholeAndNamesItsRunAndTheNextRunTidiesUp() throws Exception {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    int mixed = 0;
    int littered = 0;
    EndlessWriter.write(folder, EndlessWriter.RUNS.get(0));
    for (int kill = 0; kill < KILLS; kill++) {
      Child child =
          Child.start(folder, List.of(), EndlessWriter.class.getName(), List.of(folder.toString()));
      while (Files.size(child.out()) == 0) {
        Thread.sleep(1);
      }
      Thread.sleep(random.nextInt(LATEST_MILLIS));
      child.process().destroyForcibly();
      child.code();
      Set<RunMark> runs = new HashSet<>();
      for (String name : EndlessWriter.NAMES) {
        runs.add(whole(folder.resolve(name), seed));
      }
      mixed += runs.size() > 1 ? 1 : 0;
      littered += names().size() > EndlessWriter.NAMES.size() ? 1 : 0;
      EndlessWriter.write(folder, EndlessWriter.RUNS.get(kill % 2));
      assertEquals(new TreeSet<>(EndlessWriter.NAMES), names(), "seed " + seed);
      for (String name : EndlessWriter.NAMES) {
        assertEquals(EndlessWriter.RUNS.get(kill % 2), whole(folder.resolve(name), seed));
      }
    }
    System.out.println(
        "Killed while writing: "
            + KILLS
            + " times, "
            + mixed
            + " sets of two runs, "
            + littered
            + " with litter, all whole and put right by the next run");
  }

  private static RunMark whole(Path file, long seed) throws IOException {
    RunMark run = RunMark.of(file).orElseThrow(() -> new AssertionError(file + ", seed " + seed));
    assertTrue(EndlessWriter.RUNS.contains(run), file + ", seed " + seed);
    byte[] expected = run.in(file.getFileName().toString(), EndlessWriter.content(run));
    assertArrayEquals(expected, Files.readAllBytes(file), file + ", seed " + seed);
    return run;
  }

  private Set<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return new TreeSet<>(all.map(f -> f.getFileName().toString()).toList());
    }
  }
}
