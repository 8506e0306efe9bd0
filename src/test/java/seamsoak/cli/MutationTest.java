package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletReader;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;

/**
 * The demo's files with random damage. Each is read; what can be read is walked on a coarse grid,
 * and one in so many is answered in full. {@code -Dmutations=10000} sets how many, {@code
 * -Dmutations.full=8} how many go on one full answer, {@code -Dmutations.seed} repeats a run.
 */
class MutationTest {
  private static final int COUNT = Integer.getInteger("mutations", 500);
  private static final int ONE_IN = Integer.getInteger("mutations.full", 25);
  private static final long SEED = Long.getLong("mutations.seed", System.nanoTime());
  private static final Duration HANGS = Duration.ofSeconds(60);

  private final SteelTable steels = SteelTable.load(DataFolder.packed());
  private final Shop shop =
      new Shop(Correlations.load(DataFolder.packed()), Assumptions.USUAL, Resolution.SAMPLE);
  private final Map<String, Integer> counts = new TreeMap<>();
  private long slowestNanos;
  private long slowestSeed;

  @TempDir private Path folder;

  @Test
  void damageGivesAnAnswerOrOneSentence() throws IOException {
    Mutator mutator = new Mutator(demos());
    for (int i = 0; i < COUNT; i++) {
      long seed = SEED + i;
      Path file = Files.write(folder.resolve("billet.json"), mutator.file(seed));
      long start = System.nanoTime();
      try {
        String came = assertTimeoutPreemptively(HANGS, () -> answer(file));
        counts.merge(came, 1, Integer::sum);
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError(
            "-Dmutations=1 -Dmutations.full=1 -Dmutations.seed=" + seed + ": " + e.getMessage(), e);
      }
      if (System.nanoTime() - start > slowestNanos) {
        slowestNanos = System.nanoTime() - start;
        slowestSeed = seed;
      }
      try (Stream<Path> left = Files.list(folder)) {
        assertTrue(left.allMatch(file::equals), "something was written, seed " + seed);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "Mutations: %d %s, seed %d; slowest %.1f s, seed %d%n",
        COUNT,
        counts,
        SEED,
        slowestNanos / 1e9,
        slowestSeed);
  }

  private String answer(Path file) {
    Billet billet;
    try {
      billet = BilletReader.read(file, steels);
    } catch (Fault fault) {
      return "not read, exit code " + full(file);
    }
    try {
      for (Stage stage : new BilletWalk(shop).walk(billet)) {
        sound(stage);
      }
    } catch (Fault fault) {
      return "not walked, exit code " + full(file);
    }
    int walked = counts.values().stream().mapToInt(n -> n).sum();
    return walked % ONE_IN == 0 ? "answered, exit code " + full(file) : "walked";
  }

  private static int full(Path file) {
    Ran ran = Ran.run("soak", file.toString(), "--samples", "2");
    Contract.said(ran, "");
    return ran.code();
  }

  private static void sound(Stage stage) {
    List<Double> numbers =
        List.of(
            stage.piece().size().thicknessMetres(),
            stage.piece().size().widthMetres(),
            stage.piece().size().lengthMetres(),
            stage.piece().thicknessSkin().carbon(),
            stage.piece().widthSkin().carbon());
    numbers.forEach(n -> assertTrue(Double.isFinite(n) && n >= 0, stage.toString()));
    stage.piece().families().forEach(f -> assertTrue(Double.isFinite(f.strip().carbon())));
  }

  private static List<String> demos() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("alloy-data/billets"))) {
      return all.sorted().map(HostileCase::read).toList();
    }
  }
}
