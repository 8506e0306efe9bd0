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
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Child;
import seamsoak.support.Contract;
import seamsoak.support.HostileCase;
import seamsoak.support.Ran;

/** What comes of a run when the machine lets it down or the smith stops it. */
@Tag("slow")
class FaultsTest {
  private static final String QUICK =
      HostileCase.FOLDER.resolve("quick.json").toAbsolutePath().toString();
  private static final String MAIN = "seamsoak.cli.Main";

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
    assertEquals("", saidWithoutReader(60, List.of("steels", "--json", "--sources")));
  }

  @Test
  void aPlanWhoseReaderLeavesIsWrittenAllTheSame() throws Exception {
    saidWithoutReader(120, List.of("plan", QUICK, "--samples", "2", "--json", "--out", "out"));
    Contract.wholeSet(folder.resolve("out"));
  }

  /** What a run says beside its answer when nobody reads that; it has to end well. */
  private String saidWithoutReader(int seconds, List<String> args) throws Exception {
    Path err = folder.resolve("err");
    Process process =
        Child.builder(folder, List.of("-Duser.language=en"), MAIN, args)
            .redirectError(err.toFile())
            .start();
    process.getInputStream().close();
    assertTrue(process.waitFor(seconds, TimeUnit.SECONDS));
    assertEquals(0, process.exitValue(), Files.readString(err));
    return Files.readString(err);
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

  /** The same with a limit that needs no rights: no file may grow beyond 24 kB. */
  @Test
  void aFileThatMayNotGrowLeavesTheOldSet() throws Exception {
    Path out = folder.resolve("out");
    assertEquals(0, plan(out, "--units", "us").code());
    Map<Path, String> before = Contract.snapshot(out);
    Path err = folder.resolve("err");
    List<String> limited =
        new ArrayList<>(List.of("bash", "-c", "ulimit -f 24 && exec \"$@\"", "bash"));
    ProcessBuilder plan =
        Child.builder(
            folder,
            List.of("-XX:-UsePerfData"),
            MAIN,
            List.of("plan", QUICK, "--samples", "2", "--units", "metric", "--out", "out"));
    limited.addAll(plan.command());
    assumeTrue(does("bash", "-c", "ulimit -f 24"));
    Process process =
        plan.command(limited)
            .redirectError(err.toFile())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS));
    String said = Files.readString(err);
    assertEquals(3, process.exitValue(), said);
    assertEquals(1, said.lines().count(), said);
    assertTrue(said.contains("it cannot be written ("), said);
    assertEquals(before, Contract.snapshot(out));
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
