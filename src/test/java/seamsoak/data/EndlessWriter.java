package seamsoak.data;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** Writes sets of files of two runs in turns until it is killed. */
final class EndlessWriter {
  static final List<String> NAMES = List.of("a.txt", "b.svg", "c.html", "d.txt", "e.svg", "f.txt");
  static final List<RunMark> RUNS = List.of(RunMark.of(List.of("one")), RunMark.of(List.of("two")));

  private static final int BYTES = 200_000;

  private EndlessWriter() {}

  public static void main(String[] args) {
    Path folder = Path.of(args[0]);
    for (int i = 0; ; i++) {
      write(folder, RUNS.get(i % RUNS.size()));
      System.out.write('.');
      System.out.flush();
    }
  }

  /** A set whose every byte tells the run. */
  static void write(Path folder, RunMark run) {
    FileSet set = new FileSet(folder, Pattern.compile("[a-f]\\.[a-z]+"));
    NAMES.forEach(name -> set.put(name, content(run)));
    set.write(run);
  }

  static byte[] content(RunMark run) {
    byte[] content = new byte[BYTES];
    java.util.Arrays.fill(content, (byte) ('A' + RUNS.indexOf(run)));
    return content;
  }
}
