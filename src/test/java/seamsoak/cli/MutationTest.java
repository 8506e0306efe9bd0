package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;
import seamsoak.support.ComputingTime;
import seamsoak.support.Contract;
import seamsoak.support.HostileCase;
import seamsoak.support.Mutator;
import seamsoak.support.Ran;

/**
 * The demo's files with random damage. Each is read, what can be read is walked on a coarse grid,
 * and one in so many goes through the whole of {@code plan}. {@code -Dmutations=10000} sets how
 * many, {@code -Dmutations.full=1} how many go on one plan, {@code -Dmutations.seed=1} where to
 * begin.
 */
@Tag("slow")
@Tag("long")
class MutationTest {
  private static final int COUNT = Integer.getInteger("mutations", 500);
  private static final int ONE_IN = Integer.getInteger("mutations.full", 25);
  private static final long SEED = Long.getLong("mutations.seed", 7);

  private static final Duration HANGS = Duration.ofSeconds(60);
  private static final int SHOWN = 20;

  private final SteelTable steels = SteelTable.load(DataFolder.packed());
  private final Names names = Names.of(steels, DataFolder.packed());
  private final Shop shop =
      new Shop(Correlations.load(DataFolder.packed()), Assumptions.USUAL, Resolution.SAMPLE);
  private final Map<String, Integer> counts = new TreeMap<>();
  private final List<String> found = new ArrayList<>();
  private int begun;
  private double slowest;
  private long slowestSeed;

  @TempDir private Path folder;

  @Test
  void damageGivesAnAnswerOrOneSentence() throws IOException {
    Mutator mutator = new Mutator(demos());
    for (long seed = SEED; seed < SEED + COUNT; seed++) {
      Path file = Files.write(folder.resolve("billet.json"), mutator.file(seed));
      try {
        counts.merge(assertTimeoutPreemptively(HANGS, () -> timed(file)), 1, Integer::sum);
      } catch (AssertionError | Exception e) {
        found.add(seed + ": " + e.getMessage());
      }
    }
    System.out.printf(
        Locale.ROOT,
        "Mutations: %d %s, from seed %d; most computing for one: %.1f s, seed %d%n",
        COUNT,
        counts,
        SEED,
        slowest,
        slowestSeed);
    assertTrue(
        found.isEmpty(),
        () ->
            found.size()
                + " of them, each seen again by -Dmutations=1 -Dmutations.full=1 -Dmutations.seed=N\n"
                + String.join("\n", found.subList(0, Math.min(SHOWN, found.size()))));
  }

  private String timed(Path file) throws Exception {
    double before = ComputingTime.seconds();
    String came = answer(file);
    double took = ComputingTime.seconds() - before;
    assertTrue(took <= Contract.SECONDS, took + " s");
    if (took > slowest) {
      slowest = took;
      slowestSeed = SEED + begun - 1;
    }
    return came;
  }

  private String answer(Path file) throws Exception {
    String came = walk(file);
    return begun++ % ONE_IN == 0 ? came + ", exit code " + plan(file) : came;
  }

  private String walk(Path file) {
    Billet billet;
    try {
      billet = BilletReader.read(file, names);
    } catch (Fault fault) {
      fault.mistakes().forEach(m -> Contract.oneSentence(m.sentence() + "."));
      return "not read";
    }
    try {
      for (Stage stage : new BilletWalk(shop).walk(billet)) {
        sound(stage);
      }
    } catch (Fault fault) {
      fault.mistakes().forEach(m -> Contract.oneSentence(m.sentence() + "."));
      return "not walked";
    }
    return "walked";
  }

  /** All of it; only files of one run may come of it, and only where they were asked for. */
  private int plan(Path file) throws Exception {
    Path out = folder.resolve("out");
    Ran ran = Ran.run("plan", file.toString(), "--samples", "2", "--out", out.toString());
    Contract.said(ran, "");
    if (ran.code() == 0 || ran.code() == 4) {
      Contract.wholeSet(out);
      try (Stream<Path> written = Files.list(out)) {
        for (Path one : (Iterable<Path>) written::iterator) {
          Files.delete(one);
        }
      }
      Files.delete(out);
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertTrue(left.allMatch(file::equals), "something else was written");
    }
    return ran.code();
  }

  private static void sound(Stage stage) {
    List<Double> numbers =
        List.of(
            stage.piece().size().thicknessMetres(),
            stage.piece().size().widthMetres(),
            stage.piece().size().lengthMetres());
    numbers.forEach(n -> assertTrue(Double.isFinite(n) && n >= 0, stage.toString()));
    stage
        .piece()
        .lines()
        .flatMap(l -> l.parts().stream())
        .forEach(s -> assertTrue(Double.isFinite(s.carbon()) && s.carbon() >= 0));
  }

  private static List<String> demos() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("alloy-data/billets"))) {
      return all.sorted().map(HostileCase::read).toList();
    }
  }
}
