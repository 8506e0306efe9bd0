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

  static Colors here() {
    return of(System.getenv(), System.console() != null);
  }

  /** The first paragraph of an answer and the command to give next. */
  String answer(String text) {
    if (!on || text.isBlank()) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    boolean first = true;
    for (String line : text.split("(?<=\n)")) {
      first &= !line.isBlank();
      String color = line.startsWith("Do not do this") ? RED : BOLD;
      out.append(first || line.startsWith("Next: ") ? around(color, line) : line);
    }
    return out.toString();
  }

  /** Headings of what is said beside the answer; those of cautions in red. */
  String beside(String text) {
    if (!on || text.isBlank()) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    for (String line : text.split("(?<=\n)")) {
      boolean heading = !line.isBlank() && !line.startsWith(" ");
      String color = line.startsWith("Caution") ? RED : BOLD;
      out.append(heading ? around(color, line) : line);
    }
    return out.toString();
  }

  private static String around(String color, String line) {
    String words = line.stripTrailing();
    return color + words + PLAIN + line.substring(words.length());
  }
}
