package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.support.Contract;
import seamsoak.support.HostileCase;
import seamsoak.support.HostileText;
import seamsoak.support.Ran;

/** The corpus of hostile and mistaken inputs, see {@code src/test/resources/hostile}. */
@Tag("slow")
@Tag("long")
class HostileInputTest {
  private static final String SAMPLES = "2";
  private static final boolean LONG = Boolean.getBoolean("long");

  /**
   * So many of the billets that are answered get their charts and report in an ordinary build; the
   * others end with the schedule. The long run draws them all.
   */
  private static final int DRAWN_ONE_IN = 5;

  private static final Map<String, Integer> COUNTS = new TreeMap<>();
  private static double slowestSeconds;
  private static String slowest = "none";

  @TempDir private Path folder;

  static Stream<HostileCase> billets() {
    return HostileCase.of("billets.txt");
  }

  static Stream<HostileCase> tables() {
    return HostileCase.of("tables.txt");
  }

  static Stream<HostileCase> lines() {
    return HostileCase.of("lines.txt");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("billets")
  void aBillet(HostileCase c) throws Exception {
    String base = c.cells().get(0);
    Path good =
        base.equals("base") || base.equals("quick")
            ? HostileCase.FOLDER.resolve(base + ".json")
            : Path.of("alloy-data/billets", base + ".json");
    byte[] bad =
        HostileCase.spoiled(
            HostileCase.read(good), quoted(c.cells().get(1)), quoted(c.cells().get(2)));
    Path file = Files.write(folder.resolve("billet.json"), bad);
    boolean refused = c.codes().stream().allMatch(code -> code == 3);
    check(
        c,
        refused || LONG || c.line() % DRAWN_ONE_IN == 0
            ? List.of("plan", file.toString(), "--samples", SAMPLES, "--out", out().toString())
            : List.of("schedule", file.toString(), "--samples", SAMPLES));
  }

  private static String quoted(String cell) {
    return HostileText.of(cell.replace('\'', '"'));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("tables")
  void aTable(HostileCase c) throws Exception {
    String table = c.cells().get(1);
    byte[] bad =
        HostileCase.spoiled(
            HostileCase.read(Path.of("alloy-data", table)),
            HostileText.of(c.cells().get(2)),
            HostileText.of(c.cells().get(3)));
    Path data = Files.createDirectory(folder.resolve("data"));
    Files.write(data.resolve(table), bad);
    List<String> args = new ArrayList<>();
    switch (c.cells().get(0)) {
      case "steels" -> args.add("steels");
      case "sources" -> args.addAll(List.of("steels", "1008", "--sources"));
      case "soak", "schedule" ->
          args.addAll(
              List.of(
                  c.cells().get(0),
                  HostileCase.FOLDER.resolve("quick.json").toString(),
                  "--samples",
                  SAMPLES));
      case "pair" -> args.addAll(List.of("pair", "1084", "75Ni8"));
      case "pairs" -> args.add("pairs");
      default -> throw new AssertionError(c);
    }
    args.addAll(List.of("--data", data.toString()));
    check(c, args);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lines")
  void aCommandLine(HostileCase c) throws Exception {
    check(c, words(c.cells().get(0)));
  }

  private void check(HostileCase c, List<String> args) throws Exception {
    Map<Path, String> before = Contract.snapshot(folder);
    Ran ran = Contract.run(args);
    if (ran.seconds() > slowestSeconds) {
      slowestSeconds = ran.seconds();
      slowest = c.toString();
    }
    COUNTS.merge(c.where().replaceFirst(":.*", "") + ", exit code " + ran.code(), 1, Integer::sum);
    assertTrue(c.codes().contains(ran.code()), ran.code() + ": " + ran.err());
    Contract.said(ran, "");
    String said =
        (ran.code() == 0 || ran.code() == 4 ? ran.out() : ran.err()).replaceAll("\\s+", " ");
    for (String word : c.words()) {
      assertTrue(said.contains(word), "no '" + word + "' in " + said);
    }
    Map<Path, String> after = Contract.snapshot(folder);
    boolean written = args.contains("plan") && ran.code() != 2 && ran.code() != 3;
    if (written) {
      Path to = Path.of(args.get(args.indexOf("--out") + 1)).toRealPath();
      Contract.wholeSet(to);
      after.keySet().removeIf(p -> p.startsWith(to));
      before.keySet().removeIf(p -> p.startsWith(to));
    }
    after.keySet().removeIf(p -> p.endsWith(".seamsoak-lock")); // stays, see FolderLock
    assertEquals(before, after);
  }

  private Path out() {
    return folder.resolve("out");
  }

  /** The words of a command line; those in braces are laid out on the disk. */
  private List<String> words(String line) throws IOException {
    Map<String, String> laid = new HashMap<>();
    List<String> words = new ArrayList<>();
    Matcher m = Pattern.compile("'([^']*)'|(\\S+)").matcher(line);
    while (m.find()) {
      String word = m.group(1) != null ? m.group(1) : m.group(2);
      Matcher brace = Pattern.compile("\\{([A-Za-z]+)}").matcher(word);
      StringBuilder full = new StringBuilder();
      while (brace.find()) {
        String name = brace.group(1);
        if (!laid.containsKey(name)) {
          laid.put(name, lay(name));
        }
        brace.appendReplacement(full, Matcher.quoteReplacement(laid.get(name)));
      }
      words.add(HostileText.of(brace.appendTail(full).toString()));
    }
    return words;
  }

  private String lay(String name) throws IOException {
    Path path = folder.resolve(name);
    return switch (name) {
      case "empty" -> "";
      case "control" -> "\u001b[2J\u009b2J\u0007\nx";
      case "long" -> "l".repeat(100_000);
      case "longAnalysis" -> "C0.5" + " Mn0.5".repeat(20_000);
      case "longName" -> "n".repeat(5_000);
      case "quick" -> HostileCase.FOLDER.resolve("quick.json").toString();
      case "mine" -> Files.copy(HostileCase.FOLDER.resolve("quick.json"), path).toString();
      case "missing", "out" -> path.toString();
      case "folder" -> Files.createDirectory(path).toString();
      case "binary" -> Files.write(path, new byte[] {(byte) 0xCA, (byte) 0xFE, 0, 0}).toString();
      case "dangling" -> Files.createSymbolicLink(path, folder.resolve("nowhere")).toString();
      case "loop" -> Files.createSymbolicLink(path, path).toString();
      case "linked" ->
          Files.createSymbolicLink(path, Files.createDirectory(folder.resolve("real"))).toString();
      case "linkedFiles" -> {
        Files.createDirectory(path);
        for (String file : List.of("plan.txt", "advice.json", "soak.svg")) {
          Files.createSymbolicLink(
              path.resolve(file), Files.writeString(folder.resolve("my-" + file), "mine"));
        }
        yield path.toString();
      }
      case "taken" -> {
        Files.createDirectories(path.resolve("plan.txt"));
        yield path.toString();
      }
      case "huge" -> {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw")) {
          file.setLength(8L << 30);
        }
        yield path.toString();
      }
      case "tableIsFolder" ->
          Files.createDirectories(path.resolve("steels.csv")).getParent().toString();
      case "tableIsEndless" -> link(path, Path.of("/dev/zero"));
      case "tableIsDangling" -> link(path, folder.resolve("nowhere"));
      case "tableIsHuge" -> {
        Files.createDirectory(path);
        try (RandomAccessFile file =
            new RandomAccessFile(path.resolve("steels.csv").toFile(), "rw")) {
          file.setLength(8L << 30);
        }
        yield path.toString();
      }
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static String link(Path data, Path table) throws IOException {
    Files.createDirectory(data);
    Files.createSymbolicLink(data.resolve("steels.csv"), table);
    return data.toString();
  }

  @AfterAll
  static void counts() {
    int all = COUNTS.values().stream().mapToInt(i -> i).sum();
    System.out.println("Hostile inputs: " + all + " " + COUNTS);
    System.out.printf(Locale.ROOT, "Most computing for one: %.1f s, %s%n", slowestSeconds, slowest);
    assertTrue(all >= 300, all + " inputs");
  }
}
