package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.data.RunMark;

/** What comes of a run when the machine lets it down or the smith stops it. */
class FaultsTest {
  private static final String QUICK =
      HostileCase.FOLDER.resolve("quick.json").toAbsolutePath().toString();
  private static final String MAIN = "seamsoak.cli.Main";

  /** Real plans stopped or killed at random moments; each costs seconds. */
  private static final int PLANS = Integer.getInteger("kills.plans", 2);

  @TempDir private Path folder;

  @Test
  void anAnswerThatCannotBeWrittenIsNoSuccess() throws Exception {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full));
    Path err = folder.resolve("err");
    Process process =
        Child.builder(folder, List.of("-Duser.language=en"), MAIN, List.of("steels"))
            .redirectOutput(full.toFile())
            .redirectError(err.toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertEquals(3, process.exitValue());
    String said = Files.readString(err);
    assertEquals(1, said.lines().count(), said);
    assertTrue(said.startsWith("The answer could not be written: "), said);
  }

  @Test
  void aReaderThatHasSeenEnoughIsNoFault() throws Exception {
    Path err = folder.resolve("err");
    Process process =
        Child.builder(
                folder,
                List.of("-Duser.language=en"),
                MAIN,
                List.of("steels", "--json", "--sources"))
            .redirectError(err.toFile())
            .start();
    process.getInputStream().close();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, process.exitValue());
    assertEquals("", Files.readString(err));
  }

  /** A pipe can be read but once, and so could a file that vanishes meanwhile. */
  @Test
  void aBilletIsReadOnce() throws Exception {
    Path pipe = folder.resolve("billet.json");
    assumeTrue(does("mkfifo", pipe.toString()));
    Thread writer = new Thread(() -> copy(Path.of(QUICK), pipe));
    writer.start();
    Ran ran = Contract.run(List.of("soak", pipe.toString(), "--samples", "2", "--sources"));
    writer.join();
    assertEquals(0, ran.code(), ran.err());
  }

  private static void copy(Path from, Path pipe) {
    try (var out = Files.newOutputStream(pipe)) {
      Files.copy(from, out);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aFullDiskLeavesTheOldSet() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(does("mount", "-t", "tmpfs", "-o", "size=4m", "none", disk.toString()));
    try {
      assertEquals(0, plan(disk, "--units", "us").code());
      Map<Path, String> before = Contract.snapshot(disk);
      Path filler = disk.resolve("filler");
      try (var fill = Files.newOutputStream(filler)) {
        fill.write(new byte[64 << 20]);
      } catch (IOException full) {
        // as it should be
      }
      try (var most = FileChannel.open(filler, StandardOpenOption.WRITE)) {
        most.truncate(most.size() - (64 << 10)); // room for some files and not for all
      }
      Ran ran = plan(disk, "--units", "metric");
      assertEquals(3, ran.code(), ran.err());
      assertEquals("", ran.out());
      assertEquals(1, ran.err().lines().count(), ran.err());
      assertTrue(ran.err().contains("No space left on device"), ran.err());
      Files.delete(filler);
      assertEquals(before, Contract.snapshot(disk));
      assertEquals(0, plan(disk, "--units", "metric").code());
      Contract.wholeSet(disk);
    } finally {
      does("umount", disk.toString());
    }
  }

  @Test
  void aFolderThatMayOnlyBeReadIsRefusedAtOnce() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    boolean mounted = does("mount", "-t", "tmpfs", "-o", "ro", "none", disk.toString());
    assumeTrue(mounted || disk.toFile().setWritable(false) && !Files.isWritable(disk));
    try {
      Ran ran = plan(disk);
      assertEquals(3, ran.code(), ran.err());
      assertEquals(1, ran.err().lines().count(), ran.err());
      assertTrue(ran.err().startsWith(disk + ": it may not be written to"), ran.err());
      Ran below = plan(disk.resolve("below"));
      assertEquals(3, below.code(), below.err());
      assertTrue(below.err().contains("the folder cannot be made"), below.err());
    } finally {
      if (mounted) {
        does("umount", disk.toString());
      }
    }
  }

  /** Asked to stop, a run leaves the old set or the new one, and nothing else. */
  @Test
  void stoppedAtAnyMomentOneSetIsThere() throws Exception {
    atRandomMoments(
        Process::destroy,
        child -> {
          int code = child.process().exitValue();
          assertTrue(code == 0 || code == 143, code + " is no honest exit code");
          assertTrue(litter().isEmpty(), litter().toString());
          Contract.wholeSet(folder.resolve("out"));
        });
  }

  /** Killed, a run may leave files of two runs; each is whole and says which. */
  @Test
  void killedAtAnyMomentEveryFileIsWholeAndTheNextRunPutsItRight() throws Exception {
    atRandomMoments(
        Process::destroyForcibly,
        child -> {
          try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            for (Path file :
                files.filter(f -> !f.getFileName().toString().startsWith(".")).toList()) {
              Contract.whole(file);
              assertTrue(RunMark.of(file).isPresent(), file.toString());
            }
          }
          assertEquals(0, plan(folder.resolve("out"), "--units", "us").code());
          assertEquals(List.of(), litter());
          Contract.wholeSet(folder.resolve("out"));
        });
  }

  private interface Check {
    void of(Child child) throws Exception;
  }

  private void atRandomMoments(Consumer<Process> end, Check check) throws Exception {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    assertEquals(0, plan(folder.resolve("out"), "--units", "us").code());
    List<String> args =
        List.of("plan", QUICK, "--samples", "2", "--units", "metric", "--out", "out");
    long start = System.nanoTime();
    assertEquals(0, Child.start(folder, List.of(), MAIN, args).code());
    long whole = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    for (int n = 0; n < PLANS; n++) {
      assertEquals(0, plan(folder.resolve("out"), "--units", "us").code());
      Child child = Child.start(folder, List.of(), MAIN, args);
      // the writing comes last: look there more often
      long moment = n % 2 == 0 ? random.nextLong(whole) : whole - random.nextLong(whole / 8 + 1);
      Thread.sleep(moment);
      end.accept(child.process());
      child.code();
      try {
        check.of(child);
      } catch (AssertionError e) {
        throw new AssertionError(
            "seed " + seed + ", after " + moment + " ms: " + e.getMessage(), e);
      }
    }
  }

  private List<String> litter() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      return files.map(f -> f.getFileName().toString()).filter(f -> f.startsWith(".")).toList();
    }
  }

  private static Ran plan(Path out, String... more) {
    List<String> args =
        new ArrayList<>(List.of("plan", QUICK, "--samples", "2", "--out", out.toString()));
    args.addAll(List.of(more));
    return Contract.run(args);
  }

  private static boolean does(String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }
}
