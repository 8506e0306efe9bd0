package seamsoak.support;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One line of a table of hostile inputs.
 *
 * @param where table and line
 * @param codes exit codes that are right
 * @param words what the one sentence has to hold
 * @param cells the rest of the line, not yet decoded
 */
public record HostileCase(
    String where, List<Integer> codes, List<String> words, List<String> cells) {
  public static final Path FOLDER = Path.of("src/test/resources/hostile");

  public static Stream<HostileCase> of(String table) {
    List<String> lines = read(FOLDER.resolve(table)).lines().toList();
    return IntStream.range(0, lines.size())
        .filter(i -> !lines.get(i).isBlank() && !lines.get(i).startsWith("#"))
        .mapToObj(i -> of(table + ":" + (i + 1), lines.get(i)));
  }

  private static HostileCase of(String where, String line) {
    List<String> cells = new ArrayList<>(Arrays.stream((line + " ").split(" ?\\| ?", -1)).toList());
    int last = cells.size() - 1;
    cells.set(last, cells.get(last).stripTrailing());
    return new HostileCase(
        where,
        Arrays.stream(cells.get(0).split("/")).map(Integer::valueOf).toList(),
        Arrays.stream(cells.get(1).split(" & "))
            .filter(w -> !w.isEmpty())
            .map(HostileText::of)
            .toList(),
        cells.subList(2, cells.size()));
  }

  /** Its line in the table. */
  public int line() {
    return Integer.parseInt(where.replaceFirst(".*:", ""));
  }

  public static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * A file spoiled: the whole of it for {@code @}, else every part that reads so replaced.
   *
   * @param what decoded
   * @param by decoded
   */
  public static byte[] spoiled(String good, String what, String by) {
    if (what.equals("@")) {
      return HostileText.bytes(by);
    }
    if (!good.contains(what)) {
      throw new AssertionError("nothing to replace: " + what);
    }
    return HostileText.bytes(good.replace(what, by));
  }

  @Override
  public String toString() {
    String line = cells.stream().collect(Collectors.joining(" | "));
    return where + " " + (line.length() > 100 ? line.substring(0, 100) + "..." : line);
  }
}
