package seamsoak.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.xml.sax.InputSource;
import seamsoak.data.JsonTree;

/** What holds whatever the input: an answer or one sentence, and no harm to anything. */
public final class Contract {
  /** Far beyond what any input may take, for a machine with much else to do. */
  private static final Duration HANGS = Duration.ofSeconds(60);

  /**
   * How long the program may compute for one answer, {@code -Dcontract.seconds=5}. No limit in an
   * ordinary build, which shares its machine. Memory is limited by the build's {@code -Xmx512m}.
   */
  public static final int SECONDS = Integer.getInteger("contract.seconds", Integer.MAX_VALUE);

  private static final int LONGEST_SENTENCE = 1000;

  /** Inside of the program, or a number that is none. */
  private static final Pattern INSIDE =
      Pattern.compile(
          "Exception|Something went wrong|\\bat (java|seamsoak)\\.|\\bNaN\\b|Infinity|\u221E"
              + "|(?<!/dev/)\\bnull\\b|[0-9]E-?[0-9]|@[0-9a-f]{6,8}\\b");

  /** Would move the cursor of a terminal, turn the order of letters, or is no character at all. */
  private static final Pattern UPSETTING =
      Pattern.compile("[\\p{Cc}\\p{Cs}\\p{Co}\\p{Zl}\\p{Zp}\u202A-\u202E\u2066-\u2069\uFEFF]");

  private static final Set<String> KINDS = Set.of("svg", "png", "html", "txt", "json", "csv");

  private Contract() {}

  /** Runs a command line that may not hang, nor compute too long. */
  public static Ran run(List<String> args) {
    Ran ran = assertTimeoutPreemptively(HANGS, () -> Ran.run(args.toArray(String[]::new)));
    assertTrue(ran.seconds() <= SECONDS, "computed for " + ran.seconds() + " s");
    return ran;
  }

  /**
   * Checks what was said.
   *
   * @param given what the input itself may bring to the answer, such as a name
   */
  public static void said(Ran ran, String given) {
    if (ran.code() == 0 || ran.code() == 4) {
      assertFalse(ran.out().isBlank(), "no answer");
      if (ran.out().startsWith("{")) {
        ran.json();
      }
      decent(given.isEmpty() ? ran.out() : ran.out().replace(given, ""));
      decent(ran.err());
    } else {
      assertTrue(ran.code() == 2 || ran.code() == 3, ran.code() + " " + ran.err());
      assertEquals("", ran.out());
      sentences(ran.err());
    }
  }

  private static void decent(String text) {
    text.lines()
        .forEach(
            line -> {
              assertFalse(UPSETTING.matcher(line).find(), line);
              boolean json = line.matches("\\s*(\"[A-Za-z0-9]+\" ?: )?null,?");
              assertFalse(!json && INSIDE.matcher(line).find(), line);
            });
  }

  /** Each line is a sentence. */
  public static void sentences(String err) {
    assertFalse(err.isBlank());
    err.lines().forEach(Contract::oneSentence);
  }

  public static void oneSentence(String err) {
    assertEquals(1, err.lines().count(), err);
    String said = err.stripTrailing();
    assertFalse(UPSETTING.matcher(said).find(), said);
    assertFalse(
        Pattern.compile("Exception|Something went wrong|\\bat (java|seamsoak)\\.")
            .matcher(said)
            .find(),
        said);
    assertTrue(said.length() <= LONGEST_SENTENCE, said.length() + " " + said);
    assertTrue(said.endsWith(".") || said.endsWith("?"), said);
  }

  /** Every file and folder below, with what it holds. */
  public static Map<Path, String> snapshot(Path folder) throws IOException {
    Map<Path, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path f : (Iterable<Path>) files::iterator) {
        boolean small =
            Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS) && Files.size(f) < 4 << 20;
        all.put(f, small ? "" + Arrays.hashCode(Files.readAllBytes(f)) : "");
      }
    }
    return all;
  }

  /** The files in a folder are whole, of kinds that we write, and just those of the list. */
  public static void wholeSet(Path out) throws Exception {
    Path list = out.resolve("seamsoak.sha256");
    List<String> expected = new ArrayList<>();
    try (Stream<Path> files = Files.list(out)) {
      for (Path file : (Iterable<Path>) files.filter(f -> !f.equals(list)).sorted()::iterator) {
        whole(file);
        expected.add(Sha256.line(file));
      }
    }
    assertFalse(expected.isEmpty(), "nothing was written");
    List<String> lines = Files.readAllLines(list);
    assertTrue(lines.get(0).startsWith("# Written by seamsoak "), lines.get(0));
    assertEquals(expected, lines.subList(1, lines.size()));
  }

  static void whole(Path file) throws Exception {
    String name = file.getFileName().toString();
    String kind = name.substring(name.lastIndexOf('.') + 1);
    assertTrue(KINDS.contains(kind), "litter: " + name);
    byte[] bytes = Files.readAllBytes(file);
    String text = new String(bytes, StandardCharsets.UTF_8);
    switch (kind) {
      case "svg" -> {
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(text)));
        assertFalse(text.contains("<script"), name);
      }
      case "html" -> {
        assertTrue(text.contains("</html>"), name);
        assertFalse(text.toLowerCase(java.util.Locale.ROOT).contains("<script>alert"), name);
      }
      case "json" -> JsonTree.parse(name, text);
      case "csv" ->
          text.lines()
              .flatMap(l -> Arrays.stream(l.split(",")))
              .forEach(c -> assertFalse(c.matches("\"?[=@+].*"), "a formula: " + c));
      case "png" ->
          assertTrue(
              new String(bytes, StandardCharsets.ISO_8859_1).endsWith("IEND\u00AEB`\u0082"), name);
      default -> {}
    }
  }
}
