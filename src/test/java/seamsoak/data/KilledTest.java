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
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Child;
import seamsoak.support.EndlessWriter;
import seamsoak.support.Sha256;

/**
 * Killed at random moments while it writes, the program leaves nothing that is not whole; {@code
 * -Dkills=50} sets how often.
 */
@Tag("long")
class KilledTest {
  private static final int KILLS = Integer.getInteger("kills", 10);

  @TempDir private Path folder;

  @Test
  void everyFileIsWholeAndListedAndTheNextRunTidiesUp() throws Exception {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    int mixed = 0;
    int littered = 0;
    EndlessWriter.write(folder, EndlessWriter.RUNS.get(1));
    long start = System.nanoTime();
    EndlessWriter.write(folder, EndlessWriter.RUNS.get(0));
    // as long as a set or two take on this machine at this hour
    long latest = 2 * TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start) + 1;
    for (int kill = 0; kill < KILLS; kill++) {
      Child child =
          Child.start(folder, List.of(), EndlessWriter.class.getName(), List.of(folder.toString()));
      while (Files.size(child.out()) == 0) {
        Thread.sleep(1);
      }
      Thread.sleep(random.nextLong(latest));
      child.process().destroyForcibly();
      child.code();
      Set<String> runs = new HashSet<>();
      for (String name : EndlessWriter.NAMES) {
        runs.add(whole(folder.resolve(name), seed));
      }
      mixed += runs.size() > 1 ? 1 : 0;
      littered += names().size() > EndlessWriter.NAMES.size() + 1 ? 1 : 0;
      EndlessWriter.write(folder, EndlessWriter.RUNS.get(kill % 2));
      Set<String> all = new TreeSet<>(EndlessWriter.NAMES);
      all.add(Manifest.NAME);
      assertEquals(all, names(), "seed " + seed);
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

  /** The run that a file is of: it holds nothing but that run's bytes, and is on the list so. */
  private String whole(Path file, long seed) throws IOException {
    byte[] found = Files.readAllBytes(file);
    String run = EndlessWriter.RUNS.get(found[0] == 'A' ? 0 : 1);
    assertArrayEquals(EndlessWriter.content(run), found, file + ", seed " + seed);
    Set<String> listed = Set.copyOf(Files.readAllLines(folder.resolve(Manifest.NAME)));
    assertTrue(listed.contains(Sha256.line(file)), file + " is not listed, seed " + seed);
    return run;
  }

  private Set<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return new TreeSet<>(all.map(f -> f.getFileName().toString()).toList());
    }
  }
}
