package seamsoak.data;

/** Where blanks, comments and values end in a text that is known to be JSON. */
final class JsonScan {
  private static final String ENDS_SCALAR = ",]}/ \t\r\n";

  private JsonScan() {}

  static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || isLineEnd(c) || Quotes.hardSpace(c);
  }

  /** The first place from there on that is not blank; a comment is not. */
  static int afterBlank(String text, int from) {
    int i = from;
    while (i < text.length() && isBlank(text.charAt(i))) {
      i++;
    }
    return i;
  }

  /** The first place from there on that is neither blank nor part of a comment. */
  static int afterComments(String text, int from) {
    int i = afterBlank(text, from);
    while (i < text.length() && text.charAt(i) == '/') {
      i = afterBlank(text, commentEnd(text, i));
    }
    return i;
  }

  static boolean isLineComment(String text, int start) {
    return text.startsWith("//", start);
  }

  /** The end of the comment that begins there; one to the end of its line ends before that. */
  static int commentEnd(String text, int start) {
    if (!isLineComment(text, start)) {
      return text.indexOf("*/", start + 2) + 2;
    }
    int i = start;
    while (i < text.length() && !isLineEnd(text.charAt(i))) {
      i++;
    }
    return i;
  }

  /**
   * The same with blanks for all comments. It need not be JSON yet: a text that is not closed ends
   * with its line.
   */
  static String withoutComments(String text) {
    StringBuilder all = new StringBuilder(text);
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted) {
        quoted = c != '"' && !isLineEnd(c);
        i += c == '\\' ? 1 : 0;
      } else if (isLineComment(text, i) || text.startsWith("/*", i)) {
        int end = commentEnd(text, i);
        int last = end < i + 2 ? text.length() : end; // one that is not closed goes to the end
        for (; i < last; i++) {
          all.setCharAt(i, isLineEnd(text.charAt(i)) ? text.charAt(i) : ' ');
        }
        i--;
      } else {
        quoted = c == '"';
      }
    }
    return all.toString();
  }

  static int stringEnd(String text, int start) {
    int i = start + 1;
    while (text.charAt(i) != '"') {
      i += text.charAt(i) == '\\' ? 2 : 1;
    }
    return i + 1;
  }

  static int valueEnd(String text, int start) {
    int depth = 0;
    int i = start;
    do {
      char c = text.charAt(i);
      if (c == '"') {
        i = stringEnd(text, i);
      } else if (c == '/') {
        i = commentEnd(text, i);
      } else if (c == '{' || c == '[') {
        depth++;
        i++;
      } else if (c == '}' || c == ']') {
        depth--;
        i++;
      } else if (depth == 0) {
        i = scalarEnd(text, i);
      } else {
        i++;
      }
    } while (depth > 0);
    return i;
  }

  private static int scalarEnd(String text, int start) {
    int i = start;
    while (i < text.length() && ENDS_SCALAR.indexOf(text.charAt(i)) < 0) {
      i++;
    }
    return i;
  }

  /** How many lines end within; CR and LF together are one end. */
  static int lineEnds(String text) {
    int ends = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      ends += c == '\n' || c == '\r' && !text.startsWith("\n", i + 1) ? 1 : 0;
    }
    return ends;
  }
}
