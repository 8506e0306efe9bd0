package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Child;
import seamsoak.support.Contract;
import seamsoak.support.HostileCase;
import seamsoak.support.Ran;
import seamsoak.support.Sha256;

/** Plans stopped or killed at random moments; {@code -Dkills.plans=50} sets how many of each. */
@Tag("slow")
@Tag("long")
class StoppedTest {
  private static final int PLANS = Integer.getInteger("kills.plans", 2);
  private static final String QUICK =
      HostileCase.FOLDER.resolve("quick.json").toAbsolutePath().toString();

  /** 128 and the number of the signal, as shells have it. */
  private static final int INTERRUPTED = 130;

  private static final int TERMINATED = 143;

  private static final String LIST = "seamsoak.sha256";

  private final Map<String, Integer> counts = new TreeMap<>();

  @TempDir private Path folder;
  private Path out;
  private Map<Path, String> old;
  private Map<Path, String> fresh;

  private interface Stop {
    /** Ends a run; gives the exit code that is honest. */
    int of(Process run, int number) throws Exception;
  }

  private interface Check {
    void of(int code, int honest) throws Exception;
  }

  @BeforeEach
  void anOldSet() throws Exception {
    out = folder.resolve("out");
    assertEquals(0, run().code());
    fresh = Contract.snapshot(out);
    renew();
    old = Contract.snapshot(out);
    assertEquals(old.keySet(), fresh.keySet());
    assertNotEquals(old, fresh);
  }

  /** Asked to stop, a run leaves the old set or the new one, and nothing else. */
  @Test
  void stoppedAtAnyMomentOneSetIsThere() throws Exception {
    atRandomMoments(
        "Asked to stop",
        (run, number) -> {
          boolean interrupt = number % 2 == 0;
          new ProcessBuilder("kill", interrupt ? "-INT" : "-TERM", "" + run.pid())
              .start()
              .waitFor();
          return interrupt ? INTERRUPTED : TERMINATED;
        },
        (code, honest) -> {
          assertTrue(code == 0 || code == honest, code + " is no honest exit code");
          assertEquals(List.of(), litter());
          Contract.wholeSet(out);
          Map<Path, String> found = Contract.snapshot(out);
          boolean oldThere = found.equals(old);
          assertTrue(oldThere || found.equals(fresh), "neither set is there");
          assertTrue(code != 0 || !oldThere, "said to be done, and the old set is there");
          count((code == 0 ? "done, " : "stopped, ") + (oldThere ? "old set" : "new set"));
        });
  }

  /** Killed, a run may leave files of two runs; each is whole and listed as it is. */
  @Test
  void killedAtAnyMomentEveryFileIsWholeAndTheNextRunPutsItRight() throws Exception {
    atRandomMoments(
        "Killed",
        (run, number) -> {
          run.destroyForcibly();
          return 0;
        },
        (code, any) -> {
          count(sets());
          if (!litter().isEmpty()) {
            count("with litter");
          }
          renew();
          assertEquals(List.of(), litter());
          Contract.wholeSet(out);
          assertEquals(old, Contract.snapshot(out));
        });
  }

  private void atRandomMoments(String what, Stop stop, Check check) throws Exception {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    long start = System.nanoTime();
    assertEquals(0, run().code());
    long whole = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    for (int n = 0; n < PLANS; n++) {
      renew();
      Child child = run();
      // the writing comes last: look there more often
      long moment = n % 4 < 2 ? random.nextLong(whole) : whole - random.nextLong(whole / 6 + 1);
      child.process().waitFor(moment, TimeUnit.MILLISECONDS);
      int honest = stop.of(child.process(), n);
      int code = child.code();
      try {
        check.of(code, honest);
      } catch (AssertionError e) {
        throw new AssertionError(
            "seed " + seed + ", after " + moment + " ms: " + e.getMessage(), e);
      }
    }
    System.out.println(what + " in the middle of a plan: " + PLANS + " times " + counts);
  }

  private Child run() throws IOException {
    return Child.start(
        folder,
        List.of(),
        "seamsoak.cli.Main",
        List.of("plan", QUICK, "--samples", "2", "--units", "metric", "--out", "out"));
  }

  private void renew() {
    Ran ran =
        Contract.run(
            List.of("plan", QUICK, "--samples", "2", "--units", "us", "--out", out.toString()));
    assertEquals(0, ran.code(), ran.err());
  }

  /** Which sets the files are of; each is just as one of them has it, and listed so. */
  private String sets() throws Exception {
    Map<Path, String> found = Contract.snapshot(out);
    Set<String> listed = Set.copyOf(Files.readAllLines(out.resolve(LIST)));
    Set<String> sets = new TreeSet<>();
    for (Path file : old.keySet()) {
      if (Files.isRegularFile(file) && !file.endsWith(LIST)) {
        String now = found.get(file);
        assertTrue(
            now.equals(old.get(file)) || now.equals(fresh.get(file)), file + " is of no run");
        assertTrue(listed.contains(Sha256.line(file)), file + " is not listed");
        if (!old.get(file).equals(fresh.get(file))) {
          sets.add(now.equals(old.get(file)) ? "old set" : "new set");
        }
      }
    }
    return String.join(" and ", sets);
  }

  private List<Path> litter() throws IOException {
    try (Stream<Path> files = Files.list(out)) {
      return files.filter(StoppedTest::isLitter).toList();
    }
  }

  private static boolean isLitter(Path file) {
    return file.getFileName().toString().startsWith(".");
  }

  private void count(String what) {
    counts.merge(what, 1, Integer::sum);
  }
}
