package seamsoak.support;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import seamsoak.data.FileSet;

/** Writes sets of files of two runs in turns until it is killed. */
public final class EndlessWriter {
  public static final List<String> NAMES =
      List.of("a.txt", "b.svg", "c.html", "d.txt", "e.svg", "f.txt");
  public static final List<String> RUNS = List.of("A", "B");

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

  /** A set whose every byte tells the run; what another run has written it takes for its own. */
  public static void write(Path folder, String run) {
    FileSet set = new FileSet(folder, Pattern.compile("[a-f]\\.[a-z]+"));
    NAMES.forEach(name -> set.put(name, content(run)));
    set.refuseStrangers();
    set.write("a test");
  }

  public static byte[] content(String run) {
    return run.repeat(BYTES).getBytes(StandardCharsets.US_ASCII);
  }
}
