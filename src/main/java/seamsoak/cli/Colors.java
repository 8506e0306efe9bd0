package seamsoak.cli;

import java.util.Map;

/**
 * Sets what matters most in bold or red, on a terminal that shows it.
 *
 * @param on whether it does
 */
record Colors(boolean on) {
  private static final String BOLD = "\u001b[1m";
  private static final String RED = "\u001b[1;31m";
  private static final String PLAIN = "\u001b[0m";

  /** Where nobody watches, or somebody has said no, there are none. */
  static Colors of(Map<String, String> environment, boolean terminal) {
    boolean refused =
        !environment.getOrDefault("NO_COLOR", "").isEmpty()
            || environment.getOrDefault("TERM", "dumb").equals("dumb");
    return new Colors(terminal && !refused);
  }

  /** The first paragraph of an answer, its cautions and the command to give next. */
  String answer(String text) {
    if (!on || text.isBlank()) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    boolean first = true;
    for (String line : text.split("(?<=\n)")) {
      first &= !line.isBlank();
      boolean danger = line.startsWith("Do not do this") || line.startsWith("Cautions");
      out.append(
          danger
              ? around(RED, line)
              : first || line.startsWith("Next: ") ? around(BOLD, line) : line);
    }
    return out.toString();
  }

  private static String around(String color, String line) {
    String words = line.stripTrailing();
    return color + words + PLAIN + line.substring(words.length());
  }
}
