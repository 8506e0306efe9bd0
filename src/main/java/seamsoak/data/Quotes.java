package seamsoak.data;

/**
 * Makes JSON of a text that phones and word processors have set: typographic quotes become straight
 * ones, hard spaces become plain, and an inch mark before the end of a text, as in {@code "7/8""},
 * no longer ends it. Every character keeps its place.
 */
public final class Quotes {
  private static final char INCHES = '\u2033';
  private static final String CURLY = "\u201C\u201D\u201E\u201F";
  private static final String HARD_SPACES = "\u00A0\u2007\u202F";

  private final char[] text;
  private int at;

  private Quotes(String text) {
    this.text = text.toCharArray();
  }

  /** The text with straight quotes; of what is JSON already it may be another text. */
  public static String straight(String text) {
    Quotes quotes = new Quotes(text);
    while (quotes.at < text.length()) {
      quotes.outside();
    }
    return new String(quotes.text);
  }

  /** Whether a text has quotes that only typography has. */
  static boolean curly(char c) {
    return CURLY.indexOf(c) >= 0;
  }

  /** Whether a space is one that JSON does not know. */
  static boolean hardSpace(char c) {
    return HARD_SPACES.indexOf(c) >= 0;
  }

  private void outside() {
    char c = text[at];
    if (c == '/' && next(1) == '/') {
      skipTo("\n");
    } else if (c == '/' && next(1) == '*') {
      skipTo("*/");
    } else if (quote(c)) {
      inside();
    } else {
      if (HARD_SPACES.indexOf(c) >= 0) {
        text[at] = ' ';
      }
      at++;
    }
  }

  private void inside() {
    boolean low = text[at] == '\u201E';
    text[at++] = '"';
    for (; at < text.length; at++) {
      char c = text[at];
      if (c == '\\') {
        at++;
      } else if (quote(c) && quote(next(1)) && ends(next(2))) {
        text[at] = INCHES;
      } else if (c == '"'
          || c == '\u201D'
          || c == '\u201F'
          || c == '\u201C' && (low || ends(next(1)))) {
        text[at++] = '"';
        return;
      }
    }
  }

  /** Whether this may follow a text. */
  private static boolean ends(char c) {
    return c == 0
        || ",:]}/".indexOf(c) >= 0
        || Character.isWhitespace(c)
        || HARD_SPACES.indexOf(c) >= 0;
  }

  private static boolean quote(char c) {
    return c == '"' || curly(c);
  }

  private char next(int ahead) {
    return at + ahead < text.length ? text[at + ahead] : 0;
  }

  private void skipTo(String end) {
    int found = new String(text, at, text.length - at).indexOf(end);
    at = found < 0 ? text.length : at + found + end.length();
  }
}
