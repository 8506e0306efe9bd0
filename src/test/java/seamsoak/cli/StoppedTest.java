package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.data.RunMark;

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

  private final Map<String, Integer> counts = new TreeMap<>();

  @TempDir private Path folder;
  private Path out;
  private RunMark old;

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
    renew();
    old = marks().iterator().next();
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
          boolean oldThere = marks().contains(old);
          assertTrue(code != 0 || !oldThere, "said to be done, and the old set is there");
          count((code == 0 ? "done, " : "stopped, ") + (oldThere ? "old set" : "new set"));
        });
  }

  /** Killed, a run may leave files of two runs; each is whole and says which. */
  @Test
  void killedAtAnyMomentEveryFileIsWholeAndTheNextRunPutsItRight() throws Exception {
    atRandomMoments(
        "Killed",
        (run, number) -> {
          run.destroyForcibly();
          return 0;
        },
        (code, any) -> {
          Set<RunMark> marks = marks();
          count(marks.size() > 1 ? "two sets" : marks.contains(old) ? "old set" : "new set");
          if (!litter().isEmpty()) {
            count("with litter");
          }
          renew();
          assertEquals(List.of(), litter());
          Contract.wholeSet(out);
          assertEquals(Set.of(old), marks());
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

  /** The runs that the files in the folder name; each file is whole. */
  private Set<RunMark> marks() throws Exception {
    Set<RunMark> marks = new HashSet<>();
    try (Stream<Path> files = Files.list(out)) {
      for (Path file : (Iterable<Path>) files.filter(f -> !isLitter(f))::iterator) {
        Contract.whole(file);
        marks.add(RunMark.of(file).orElseThrow(() -> new AssertionError(file + " names no run")));
      }
    }
    return marks;
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
