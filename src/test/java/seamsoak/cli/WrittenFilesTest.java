package seamsoak.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Contract;
import seamsoak.support.Ran;

/** What plan and schedule leave on the disk, and what they leave alone. */
@Tag("slow")
class WrittenFilesTest {
  private static final String GALVANIZED = "alloy-data/billets/galvanized-jacket.json";
  private static final String SAN_MAI = "alloy-data/billets/san-mai.json";

  @TempDir private Path folder;

  /** The same program in either system: 1.8 F to the degree, 32 F at freezing. */
  @Test
  void theProgramIsWrittenInEitherSystem() throws IOException {
    List<String> metric = program("metric");
    List<String> us = program("us");
    assertEquals("step,segment,rate_C_per_h,to_C,stay_min,then", metric.get(0));
    assertEquals("step,segment,rate_F_per_h,to_F,stay_min,then", us.get(0));
    assertEquals(
        "step,segment,rate_F_per_h,rate_C_per_h,to_F,to_C,stay_min,then", program("both").get(0));
    assertEquals(metric.size(), us.size());
    assertTrue(metric.size() > 6);
    for (int i = 1; i < metric.size(); i++) {
      String[] c = metric.get(i).split(",");
      String[] f = us.get(i).split(",");
      assertEquals(1.8 * Double.parseDouble(c[3]) + 32, Double.parseDouble(f[3]), 3.5);
      assertEquals(1.8 * Double.parseDouble(c[2]), Double.parseDouble(f[2]), 1.9);
      assertEquals(c[4], f[4]);
    }
  }

  private List<String> program(String units) throws IOException {
    Path file = folder.resolve(units + ".csv");
    Ran ran = schedule(file, "--units", units);
    assertEquals(0, ran.code(), ran.err());
    return Files.readAllLines(file);
  }

  /** What a file holds, told as if it lay in another folder: two of them name where they lie. */
  private static byte[] written(Path file, Path folder, Path as) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    boolean tells = file.toString().matches(".*\\.(json|html)");
    return tells
        ? new String(bytes, UTF_8).replace(folder.toString(), as.toString()).getBytes(UTF_8)
        : bytes;
  }

  @Test
  void planWritesItsFilesTheSameEachTime() throws Exception {
    Path first = folder.resolve("a/new/folder");
    Path second = folder.resolve("b");
    Ran ran = runInto(first, "--png");
    runInto(second, "--png");
    List<String> names;
    try (Stream<Path> files = Files.list(first)) {
      names = files.map(f -> f.getFileName().toString()).sorted().toList();
    }
    assertEquals(
        List.of(
            "advice.json",
            "face.png",
            "face.svg",
            "fading.png",
            "fading.svg",
            "plan.txt",
            "report.html",
            "schedule.png",
            "schedule.svg",
            "seam.png",
            "seam.svg",
            "seamsoak.sha256",
            "section-1.png",
            "section-1.svg",
            "soak.png",
            "soak.svg"),
        names);
    Contract.wholeSet(first);
    for (String name : names) {
      if (name.equals("seamsoak.sha256")) {
        continue; // of two files that name where they lie, so not the same in two places
      }
      assertTrue(ran.out().contains(first.resolve(name).toString()), name);
      assertArrayEquals(
          written(first.resolve(name), first, first),
          written(second.resolve(name), second, first),
          name);
    }
    assertTrue(Files.readString(first.resolve("plan.txt")).contains("\nCautions\nAlways\n"));
  }

  @Test
  void whatAnotherHandHasPutThereIsNotWrittenOver() throws IOException {
    Path out = folder.resolve("kept");
    assertEquals(4, runInto(out).code());
    assertEquals(4, runInto(out).code(), "files of its own it renews");
    Path mine = out.resolve("soak.svg");
    Files.writeString(mine, "<svg/>");
    Ran refused = runInto(out);
    assertEquals(3, refused.code());
    assertTrue(
        refused.err().contains(mine + ": it was not written by this program"), refused.err());
    assertEquals("<svg/>", Files.readString(mine));
    assertEquals(4, runInto(out, "--replace").code());
    assertTrue(Files.size(mine) > 1000);
  }

  /** Charts of a run that had more go. */
  @Test
  void whatThisRunHasNoMoreIsTakenAway() throws Exception {
    Path out = folder.resolve("out");
    assertEquals(4, runInto(out, "--png").code());
    Path mine = Files.writeString(out.resolve("notes.txt"), "mine");
    Path pairs = out.resolve("pairs.svg");
    assertEquals(0, Ran.run("pairs", "1084", "75Ni8", "--out", out.toString()).code());
    Ran one = Ran.run("plan", "src/test/resources/hostile/one-bar.json", "--out", out.toString());
    assertEquals(0, one.code(), one.err());
    assertTrue(Files.exists(mine) && Files.exists(pairs), "not of a plan");
    Files.delete(mine);
    assertTrue(Files.notExists(out.resolve("seam.svg")), "one bar has no seam");
    Contract.wholeSet(out);
  }

  @Test
  void aProgramIsNotWrittenOverWhatAnotherHandWrote() throws IOException {
    Path mine = Files.writeString(folder.resolve("kiln.csv"), "mine");
    Ran refused = schedule(mine);
    assertEquals(3, refused.code(), refused.err());
    assertTrue(
        refused.err().startsWith(mine + ": it was not written by this program"), refused.err());
    assertTrue(refused.err().contains("--replace"), refused.err());
    assertEquals("mine", Files.readString(mine));
    assertEquals(0, schedule(mine, "--replace").code());
    assertTrue(Files.readString(mine).startsWith("step,segment,"));
    assertEquals(0, schedule(mine, "--units", "us").code(), "its own it renews");
    assertTrue(Files.readString(mine).startsWith("step,segment,rate_F_per_h,to_F"));
    Files.writeString(mine, "with my remarks");
    assertEquals(3, schedule(mine, "--units", "us").code(), "what is changed it leaves");
  }

  /** Who must not do this needs no program for it. */
  @Test
  void aRefusedBilletGetsNoProgram() throws IOException {
    Path file = folder.resolve("refused.csv");
    Ran refused = Ran.run("schedule", GALVANIZED, "--samples", "2", "--program", file.toString());
    assertEquals(4, refused.code());
    assertTrue(Files.notExists(file));
    assertEquals(file + " is not written: this billet is refused.", refused.err().strip());
    Path out = folder.resolve("fine");
    assertEquals(0, Ran.run("plan", SAN_MAI, "--samples", "2", "--out", out.toString()).code());
    assertTrue(Files.exists(out.resolve("kiln.csv")));
  }

  private Ran runInto(Path out, String... more) {
    List<String> args =
        new ArrayList<>(List.of("plan", GALVANIZED, "--samples", "2", "--out", out.toString()));
    args.addAll(List.of(more));
    return Ran.run(args.toArray(String[]::new));
  }

  private static Ran schedule(Path program, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("schedule", SAN_MAI, "--samples", "2", "--program", program.toString()));
    args.addAll(List.of(more));
    return Ran.run(args.toArray(String[]::new));
  }
}
