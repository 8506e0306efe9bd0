package seamsoak.data;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * A slip of the pen in JSON that leaves no doubt of what was meant, so that the rest can be read
 * and all that is wrong be told at once. Columns behind one in its line count what was mended.
 *
 * @param told what is wrong
 * @param mended the text as it was meant
 */
record JsonSlip(Mistake told, String mended) {
  private static final int LONGEST_WORD = 60;
  private static final String DELIMITERS = ",:{}[]\"";
  private static final Pattern WORD = Pattern.compile("[-+.#%/°A-Za-z0-9_ ]+");
  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?");
  private static final Pattern POINT_FIRST = Pattern.compile("-?\\.[0-9]+");

  /** The slip that a parser stumbled over, if it is one of these. */
  static Optional<JsonSlip> at(String content, Place place) {
    Text text = new Text(place.file(), content);
    OptionalInt at = text.offset(place);
    return at.isPresent()
        ? new Finder(text, JsonScan.withoutComments(content)).slip(at.getAsInt())
        : Optional.empty();
  }

  /**
   * Looks around the place at which a parser gave up.
   *
   * @param bare the text without its comments
   */
  private record Finder(Text text, String bare) {
    Optional<JsonSlip> slip(int at) {
      if (!inBrackets(at)) {
        return Optional.empty();
      }
      char there = at < bare.length() ? bare.charAt(at) : ' ';
      int before = beforeBlanks(at);
      if ((there == '}' || there == ']') && before >= 0 && bare.charAt(before) == ',') {
        return Optional.of(commaTooMany(before, there));
      }
      return "\"{[".indexOf(there) >= 0 && before >= 0 && endsValue(bare.charAt(before))
          ? commaMissing(before, at)
          : bareWord(at);
    }

    private boolean inBrackets(int at) {
      int depth = 0;
      boolean quoted = false;
      for (int i = 0; i < at; i++) {
        char c = bare.charAt(i);
        quoted = c == '"' && (i == 0 || bare.charAt(i - 1) != '\\') ? !quoted : quoted && c != '\n';
        depth += quoted ? 0 : c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
      }
      return depth > 0;
    }

    private int beforeBlanks(int at) {
      int before = Math.min(at, bare.length()) - 1;
      while (before >= 0 && Character.isWhitespace(bare.charAt(before))) {
        before--;
      }
      return before;
    }

    private static boolean endsValue(char c) {
      return c == '"' || c == '}' || c == ']' || Character.isLetterOrDigit(c);
    }

    private JsonSlip commaTooMany(int comma, char bracket) {
      return slip(
          comma, comma + 1, "", "a comma too many stands before '" + bracket + "'", "take it out");
    }

    private Optional<JsonSlip> commaMissing(int before, int at) {
      boolean sameLine = text.place(before).line() == text.place(at).line();
      return before == at - 1 && sameLine
          ? Optional.empty()
          : Optional.of(
              slip(
                  before,
                  before + 1,
                  bare.charAt(before) + ",",
                  sameLine
                      ? "a comma is missing between two entries"
                      : "a comma is missing at the end of the line",
                  "put one after " + lastWord(before)));
    }

    private String lastWord(int end) {
      int start = Math.max(Math.max(bare.lastIndexOf('\n', end), end - 19), 0);
      int open = bare.lastIndexOf('"', end - 1);
      return bare.charAt(end) == '"' && open >= start
          ? bare.substring(open, end + 1)
          : "'" + bare.charAt(end) + "'";
    }

    /** A number or a word without its quotes. */
    private Optional<JsonSlip> bareWord(int at) {
      int in = at == bare.length() || ends(at) ? at - 1 : at;
      int start = in + 1;
      while (start > 0 && !ends(start - 1)) {
        start--;
      }
      int end = Math.max(start, in);
      while (end < bare.length() && !ends(end)) {
        end++;
      }
      String word = bare.substring(start, end).strip();
      int first = bare.indexOf(word, start);
      int before = beforeBlanks(first);
      boolean stands = before >= 0 && ",:[{".indexOf(bare.charAt(before)) >= 0;
      if (word.isEmpty()
          || word.length() > LONGEST_WORD
          || !stands
          || !WORD.matcher(word).matches()
          || NUMBER.matcher(word).matches()) {
        return Optional.empty();
      }
      int next = end;
      while (next < bare.length() && Character.isWhitespace(bare.charAt(next))) {
        next++;
      }
      boolean key = next < bare.length() && bare.charAt(next) == ':';
      boolean point = POINT_FIRST.matcher(word).matches() && !key;
      String meant = point ? word.replace(".", "0.") : '"' + word + '"';
      return Optional.of(
          slip(
              first,
              first + word.length(),
              meant,
              (key ? "the key '" : "'")
                  + word
                  + (point ? "' begins with its point" : "' stands without quotes"),
              "write " + meant));
    }

    private boolean ends(int at) {
      char c = bare.charAt(at);
      return c == '\n' || c == '\r' || DELIMITERS.indexOf(c) >= 0;
    }

    /** With what stands from one place to another put right. */
    private JsonSlip slip(int from, int to, String meant, String found, String cure) {
      String content = text.content();
      return new JsonSlip(
          new Mistake(text.place(from), "", found, cure),
          content.substring(0, from) + meant + content.substring(to));
    }
  }
}
