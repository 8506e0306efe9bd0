package seamsoak.data;

import java.util.Optional;
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
  static Optional<JsonSlip> at(String text, Place place) {
    return place.line() == 0 ? Optional.empty() : new Finder(text, place).slip();
  }

  /** Looks around the place at which a parser gave up. */
  private record Finder(String text, Place place) {
    Optional<JsonSlip> slip() {
      int at = offset();
      if (at > text.length() || !inBrackets(at)) {
        return Optional.empty();
      }
      char there = at < text.length() ? text.charAt(at) : ' ';
      int before = beforeBlanks(at);
      if ((there == '}' || there == ']') && before >= 0 && text.charAt(before) == ',') {
        return Optional.of(commaTooMany(before, there));
      }
      return "\"{[".indexOf(there) >= 0 && before >= 0 && endsValue(text.charAt(before))
          ? commaMissing(before, at)
          : bareWord(at);
    }

    private int offset() {
      int at = 0;
      for (int line = 1; line < place.line(); line++) {
        int end = text.indexOf('\n', at);
        if (end < 0) {
          return text.length() + 1;
        }
        at = end + 1;
      }
      return at + Math.max(0, place.column() - 1);
    }

    private boolean inBrackets(int at) {
      int depth = 0;
      boolean quoted = false;
      for (int i = 0; i < at; i++) {
        char c = text.charAt(i);
        quoted = c == '"' && (i == 0 || text.charAt(i - 1) != '\\') ? !quoted : quoted && c != '\n';
        depth += quoted ? 0 : c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
      }
      return depth > 0;
    }

    private int beforeBlanks(int at) {
      int before = Math.min(at, text.length()) - 1;
      while (before >= 0 && Character.isWhitespace(text.charAt(before))) {
        before--;
      }
      return before;
    }

    private static boolean endsValue(char c) {
      return c == '"' || c == '}' || c == ']' || Character.isLetterOrDigit(c);
    }

    private JsonSlip commaTooMany(int comma, char bracket) {
      return slip(
          comma,
          "a comma too many stands before '" + bracket + "'",
          "take it out",
          text.substring(0, comma) + text.substring(comma + 1));
    }

    private Optional<JsonSlip> commaMissing(int before, int at) {
      boolean sameLine = text.substring(before, at).indexOf('\n') < 0;
      return before == at - 1 && sameLine
          ? Optional.empty()
          : Optional.of(
              slip(
                  before,
                  sameLine
                      ? "a comma is missing between two entries"
                      : "a comma is missing at the end of the line",
                  "put one after " + lastWord(before),
                  text.substring(0, before + 1) + "," + text.substring(before + 1)));
    }

    private String lastWord(int end) {
      int start = Math.max(Math.max(text.lastIndexOf('\n', end), end - 19), 0);
      int open = text.lastIndexOf('"', end - 1);
      return text.charAt(end) == '"' && open >= start
          ? text.substring(open, end + 1)
          : "'" + text.charAt(end) + "'";
    }

    /** A number or a word without its quotes. */
    private Optional<JsonSlip> bareWord(int at) {
      int in = at == text.length() || ends(at) ? at - 1 : at;
      int start = in + 1;
      while (start > 0 && !ends(start - 1)) {
        start--;
      }
      int end = Math.max(start, in);
      while (end < text.length() && !ends(end)) {
        end++;
      }
      String word = text.substring(start, end).strip();
      int first = text.indexOf(word, start);
      int before = beforeBlanks(first);
      boolean stands = before >= 0 && ",:[{".indexOf(text.charAt(before)) >= 0;
      if (word.isEmpty()
          || word.length() > LONGEST_WORD
          || !stands
          || !WORD.matcher(word).matches()
          || NUMBER.matcher(word).matches()
          || word.contains("//")) {
        return Optional.empty();
      }
      int next = end;
      while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
        next++;
      }
      boolean key = next < text.length() && text.charAt(next) == ':';
      boolean point = POINT_FIRST.matcher(word).matches() && !key;
      String meant = point ? word.replace(".", "0.") : '"' + word + '"';
      return Optional.of(
          slip(
              first,
              (key ? "the key '" : "'")
                  + word
                  + (point ? "' begins with its point" : "' stands without quotes"),
              "write " + meant,
              text.substring(0, first) + meant + text.substring(first + word.length())));
    }

    private boolean ends(int at) {
      char c = text.charAt(at);
      return c == '\n' || c == '\r' || DELIMITERS.indexOf(c) >= 0;
    }

    private JsonSlip slip(int at, String found, String cure, String mended) {
      String upTo = text.substring(0, at);
      int line = 1 + (int) upTo.chars().filter(c -> c == '\n').count();
      Place where = new Place(place.file(), line, at - upTo.lastIndexOf('\n'));
      return new JsonSlip(new Mistake(where, "", found, cure), mended);
    }
  }
}
