package seamsoak.support;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Damages good files: some ways break their form, others leave it and make nonsense of the content.
 *
 * @param good the files
 */
public record Mutator(List<String> good) {
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern ENTRY =
      Pattern.compile("(\"[a-z]+\"): (\"[^\"]*\"|\\[\\{[^\\]]*\\}\\])");
  private static final List<String> ODD =
      List.of(
          "0",
          "1",
          "2",
          "0.5",
          "-1",
          "1e9",
          "1e999",
          "NaN",
          "0.0000001",
          "99",
          "100",
          "101",
          "999",
          "1000",
          "4000",
          "2147483648",
          "1,5",
          "1/0",
          "007");
  private static final List<String> TOKENS =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "\"",
          "//",
          "/*",
          "*/",
          "null",
          "true",
          "[]",
          "{}",
          "\\",
          "\\u0000",
          "\u0000",
          "\uFEFF",
          "\u202E",
          "\"do\": \"weld\",",
          "{ \"do\": \"cool\", \"in\": \"air\" },",
          "\"times\": 100,",
          "\"turn\": \"all\",",
          "\"faces\": \"sealed\",",
          "\"outside\": \"sealed\",");
  private static final String LETTERS = "{}[]\":, 0123456789.-/xCFmin\n\t\\";

  /** The damaged file that a seed stands for. */
  public byte[] file(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String text = one(random, good);
    boolean formed = random.nextInt(3) > 0;
    for (int n = random.nextInt(1, 4); n > 0; n--) {
      text = formed ? nonsense(random, text) : broken(random, text);
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (!formed && random.nextInt(10) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  /** Other values in a file that stays well formed, most times. */
  private String nonsense(SplittableRandom random, String text) {
    return switch (random.nextInt(4)) {
      case 0 -> replaced(random, text, NUMBER, one(random, ODD));
      case 1 -> replaced(random, text, NUMBER, "" + random.nextInt(1, 40));
      case 2 -> otherwise(random, text);
      default -> moved(random, text);
    };
  }

  private String broken(SplittableRandom random, String text) {
    int at = random.nextInt(text.length());
    int end = Math.min(text.length(), at + random.nextInt(1, 60));
    String head = text.substring(0, at);
    String span = text.substring(at, end);
    String tail = text.substring(end);
    return switch (random.nextInt(7)) {
      case 0 -> head + LETTERS.charAt(random.nextInt(LETTERS.length())) + text.substring(at + 1);
      case 1 -> head + tail + " ";
      case 2 -> head + span + span + tail;
      case 3 -> head + one(random, TOKENS) + span + tail;
      case 4 -> head + span.repeat(random.nextInt(1, 40)) + tail;
      case 5 -> head.isEmpty() ? text : head;
      default -> {
        String other = one(random, good);
        yield head + other.substring(random.nextInt(other.length())) + " ";
      }
    };
  }

  /** What one entry says, said by another of the same key. */
  private String otherwise(SplittableRandom random, String text) {
    List<MatchResult> entries = found(ENTRY, text).toList();
    if (entries.isEmpty()) {
      return text;
    }
    MatchResult m = one(random, entries);
    List<String> others =
        good.stream()
            .flatMap(g -> found(ENTRY, g))
            .filter(e -> e.group(1).equals(m.group(1)))
            .map(e -> e.group(2))
            .distinct()
            .toList();
    String by = others.isEmpty() ? "\"\"" : one(random, others);
    return text.substring(0, m.start(2)) + by + text.substring(m.end(2));
  }

  private static String replaced(SplittableRandom random, String text, Pattern what, String by) {
    List<MatchResult> all = found(what, text).toList();
    if (all.isEmpty()) {
      return text;
    }
    MatchResult m = one(random, all);
    return text.substring(0, m.start()) + by + text.substring(m.end());
  }

  /** A line, which mostly is a step, in another place, twice, or no more there. */
  private static String moved(SplittableRandom random, String text) {
    List<String> lines = new java.util.ArrayList<>(text.lines().toList());
    int from = random.nextInt(lines.size());
    int to = random.nextInt(lines.size());
    if (random.nextBoolean()) {
      lines.add(to, lines.get(from));
    } else {
      lines.add(to, lines.remove(from));
    }
    return String.join("\n", lines) + "\n";
  }

  private static Stream<MatchResult> found(Pattern what, String text) {
    return what.matcher(text).results();
  }

  private static <T> T one(SplittableRandom random, List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
