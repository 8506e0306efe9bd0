package seamsoak.data;

import java.util.ArrayList;
import java.util.List;

/**
 * The entries of one object or list as its text has them, each with what goes where it goes: the
 * comments right above it, those behind it on its line. Put together unchanged they give the text
 * that they were cut from.
 *
 * @param start of the opening bracket
 * @param end behind the closing one
 * @param glue what stands before each entry and behind the last: blanks, and comments that belong
 *     to none
 * @param trailing whether a comma follows the last entry
 */
record JsonEntries(
    String text, int start, int end, List<Entry> entries, List<String> glue, boolean trailing) {
  /**
   * One entry.
   *
   * @param lead comments above it, with the blanks between them and it
   * @param key with the colon and all up to the value; empty in a list
   * @param start of the value in the text
   * @param gap between the value and its comma
   * @param tail comments behind it on its line
   */
  record Entry(String lead, String key, int start, String value, String gap, String tail) {
    static Entry fresh(String key, String value) {
      return new Entry("", key, 0, value, "", "");
    }

    private Entry withTail(String tail) {
      return new Entry(lead, key, start, value, gap, tail);
    }
  }

  JsonEntries {
    entries = List.copyOf(entries);
    glue = List.copyOf(glue);
  }

  /**
   * The entries between the bracket that opens there and the one that closes it.
   *
   * @param json the text as JSON has it, character for character ({@link Quotes})
   */
  static JsonEntries at(String text, String json, int open, boolean isRoot) {
    boolean object = json.charAt(open) == '{';
    List<Entry> entries = new ArrayList<>();
    List<String> glue = new ArrayList<>();
    boolean comma = false;
    int from = open + 1;
    while (true) {
      int at = JsonScan.afterComments(json, from);
      String between = text.substring(from, at);
      boolean closes = json.charAt(at) == '}' || json.charAt(at) == ']';
      int tail = tail(between, closes);
      if (!entries.isEmpty()) {
        int last = entries.size() - 1;
        entries.set(last, entries.get(last).withTail(between.substring(0, tail)));
      }
      int behind = entries.isEmpty() ? 0 : tail;
      if (closes) {
        glue.add(between.substring(behind));
        return new JsonEntries(text, open, at + 1, entries, glue, comma);
      }
      // what stands above the first key of a file is about the file
      int lead = isRoot && entries.isEmpty() ? between.length() : lead(between, tail);
      glue.add(between.substring(behind, lead));
      int value = object ? valueStart(json, at) : at;
      int end = JsonScan.valueEnd(json, value);
      int next = JsonScan.afterComments(json, end);
      comma = json.charAt(next) == ',';
      entries.add(
          new Entry(
              between.substring(lead),
              text.substring(at, value),
              value,
              text.substring(value, end),
              comma ? text.substring(end, next) : "",
              ""));
      from = comma ? next + 1 : end;
    }
  }

  private static int valueStart(String text, int key) {
    int colon = JsonScan.afterComments(text, JsonScan.stringEnd(text, key));
    return JsonScan.afterComments(text, colon + 1);
  }

  /** How much of what follows an entry is about it: comments with which its line ends. */
  private static int tail(String between, boolean closes) {
    int end = 0;
    int i = JsonScan.afterBlank(between, 0);
    while (i < between.length() && JsonScan.lineEnds(between.substring(end, i)) == 0) {
      end = JsonScan.commentEnd(between, i);
      i = JsonScan.afterBlank(between, end);
    }
    boolean lineEnds = JsonScan.lineEnds(between.substring(end)) > 0;
    return lineEnds || closes ? end : 0;
  }

  /** Where the comments begin that are about what follows: no empty line parts them from it. */
  private static int lead(String between, int from) {
    int lead = between.length();
    int end = from;
    for (int i = JsonScan.afterBlank(between, from);
        i < between.length();
        i = JsonScan.afterBlank(between, end)) {
      boolean parted = JsonScan.lineEnds(between.substring(end, i)) > 1;
      lead = parted || lead == between.length() ? i : lead;
      end = JsonScan.commentEnd(between, i);
    }
    return JsonScan.lineEnds(between.substring(end)) > 1 ? between.length() : lead;
  }

  int size() {
    return entries.size();
  }

  /** Puts an entry in. */
  JsonEntries with(int index, Entry entry, String before) {
    List<Entry> more = new ArrayList<>(entries);
    more.add(index, entry);
    List<String> wider = new ArrayList<>(glue);
    wider.add(Math.max(index, 1), before);
    return with(more, wider);
  }

  /** The first entry of none. */
  JsonEntries with(Entry only, String before, String behind) {
    return with(List.of(only), List.of(before, behind));
  }

  /** Takes an entry out with its comments; those that belong to none stay. */
  JsonEntries without(int index) {
    List<Entry> fewer = new ArrayList<>(entries);
    fewer.remove(index);
    List<String> closer = new ArrayList<>(glue);
    String gone = closer.remove(Math.max(index, 1));
    if (fewer.isEmpty() || !isBlank(gone)) {
      String here = closer.get(index);
      String kept = index == 0 ? joined(here, gone) : joined(gone, here);
      closer.set(index, fewer.isEmpty() && isBlank(kept) ? "" : kept);
    }
    return with(fewer, closer);
  }

  private static String joined(String first, String second) {
    return (startsLine(second) ? first.stripTrailing() : first) + second;
  }

  private static boolean isBlank(String glue) {
    return JsonScan.afterBlank(glue, 0) == glue.length();
  }

  JsonEntries moved(int from, int to) {
    List<Entry> other = new ArrayList<>(entries);
    other.add(to, other.remove(from));
    return with(other, glue);
  }

  private JsonEntries with(List<Entry> entries, List<String> glue) {
    return new JsonEntries(text, start, end, entries, glue, trailing);
  }

  /** The whole text with these entries in it. */
  String put(JsonStyle style) {
    StringBuilder all = new StringBuilder(text.substring(0, start + 1));
    String loose = style.lineEnd() + style.indentAt(text, start) + style.step();
    for (int i = 0; i < entries.size(); i++) {
      Entry e = entries.get(i);
      boolean comma = i < entries.size() - 1 || trailing;
      all.append(glue.get(i)).append(e.lead()).append(e.key()).append(e.value()).append(e.gap());
      all.append(comma ? "," : "").append(e.tail());
      // a comment that was the last on its line swallows what follows
      boolean swallows = endsInLineComment(e.tail()) && !startsLine(glue.get(i + 1));
      all.append(swallows ? loose : "");
    }
    return all.append(glue.get(entries.size())).append(text.substring(end - 1)).toString();
  }

  private static boolean startsLine(String glue) {
    int i = 0;
    while (i < glue.length() && (glue.charAt(i) == ' ' || glue.charAt(i) == '\t')) {
      i++;
    }
    return i < glue.length() && JsonScan.isLineEnd(glue.charAt(i));
  }

  private static boolean endsInLineComment(String tail) {
    boolean line = false;
    for (int i = JsonScan.afterBlank(tail, 0);
        i < tail.length();
        i = JsonScan.afterBlank(tail, JsonScan.commentEnd(tail, i))) {
      line = JsonScan.isLineComment(tail, i);
    }
    return line;
  }
}
