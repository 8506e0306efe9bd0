package seamsoak.data;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a JSON file is laid out, so that what is put into it looks like the rest.
 *
 * @param lineEnd of its first line
 * @param step by which each level stands further in
 * @param inBraces what stands inside the braces of an object on one line
 * @param inBrackets the same of a list
 * @param afterColon what stands behind a colon
 * @param afterComma what stands behind a comma
 */
record JsonStyle(
    String lineEnd,
    String step,
    String inBraces,
    String inBrackets,
    String afterColon,
    String afterComma) {
  /** Lines beyond that are broken, as far as something new makes them so long. */
  static final int WIDTH = 120;

  private static final Pattern LINE_END = Pattern.compile("\r\n|\n|\r");
  private static final Pattern FIRST_KEY = Pattern.compile("[\r\n]([ \t]+)\"");

  private static final String WIDE_COMMA = "[\"\\]}0-9], +[\"{\\[0-9]";
  private static final String DENSE_COMMA = "[\"\\]}0-9],[\"{\\[0-9]";

  /** The style of a file. */
  static JsonStyle of(String text) {
    Matcher end = LINE_END.matcher(text);
    Matcher key = FIRST_KEY.matcher(text);
    String afterColon = more(text, "\" ?:[^ ]", "\" ?: ") ? "" : " ";
    boolean dense = afterColon.isEmpty();
    return new JsonStyle(
        end.find() ? end.group() : "\n",
        key.find() ? key.group(1) : "  ",
        more(text, "\\{\"", "\\{ +\"") ? "" : " ",
        more(text, "\\[ +[^ \\]]", "\\[[^ \\]\r\n]") ? " " : "",
        afterColon,
        dense
            ? more(text, WIDE_COMMA, DENSE_COMMA) ? " " : ""
            : more(text, DENSE_COMMA, WIDE_COMMA) ? "" : " ");
  }

  private static boolean more(String text, String first, String second) {
    return count(text, first) > count(text, second);
  }

  private static long count(String text, String what) {
    return Pattern.compile(what).matcher(text).results().count();
  }

  /** The blanks with which the line begins that a place is in. */
  String indentAt(String text, int place) {
    int start = lineStart(text, place);
    int end = start;
    while (end < place && (text.charAt(end) == ' ' || text.charAt(end) == '\t')) {
      end++;
    }
    return text.substring(start, end);
  }

  static int lineStart(String text, int place) {
    int start = place;
    while (start > 0 && !JsonScan.isLineEnd(text.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  static int lineLength(String text, int place) {
    int end = place;
    while (end < text.length() && !JsonScan.isLineEnd(text.charAt(end))) {
      end++;
    }
    return end - lineStart(text, place);
  }

  /** A key with its colon. */
  String key(String name) {
    return quoted(name) + ":" + afterColon;
  }

  static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  /**
   * A tree of maps, lists, texts, numbers and truths as JSON: on one line where there is room, else
   * with a line for each entry.
   *
   * @param indent of the line it begins in
   * @param room on that line
   */
  String write(Object value, String indent, int room) {
    String line = line(value);
    if (line.length() <= room) {
      return line;
    }
    String inner = indent + step;
    if (value instanceof Map<?, ?> map && !map.isEmpty()) {
      List<String> entries = new ArrayList<>();
      for (Map.Entry<?, ?> e : map.entrySet()) {
        String key = key((String) e.getKey());
        entries.add(key + write(e.getValue(), inner, WIDTH - inner.length() - key.length() - 1));
      }
      return broken("{", entries, "}", indent);
    }
    if (value instanceof List<?> list && list.stream().allMatch(v -> isNested(v))) {
      return broken(
          "[",
          list.stream().map(v -> write(v, inner, WIDTH - inner.length() - 1)).toList(),
          "]",
          indent);
    }
    return value instanceof List<?> list ? filled(list, indent) : line;
  }

  private static boolean isNested(Object value) {
    return value instanceof Map<?, ?> || value instanceof List<?>;
  }

  private String broken(String open, List<String> entries, String close, String indent) {
    String start = lineEnd + indent + step;
    return open + start + String.join("," + start, entries) + lineEnd + indent + close;
  }

  /** As many numbers to a line as it holds. */
  private String filled(List<?> list, String indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (Object item : list) {
      String next = line(item);
      int wide = indent.length() + step.length() + line.length() + next.length();
      if (line.length() > 0 && wide + afterComma.length() + 2 > WIDTH) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? "," + afterComma : "").append(next);
    }
    lines.add(line.toString());
    return broken("[", lines, "]", indent);
  }

  private String line(Object value) {
    if (value instanceof Map<?, ?> map) {
      List<String> entries = new ArrayList<>();
      map.forEach((k, v) -> entries.add(key((String) k) + line(v)));
      return closed("{", inBraces, entries, "}");
    }
    if (value instanceof List<?> list) {
      return closed("[", inBrackets, list.stream().map(this::line).toList(), "]");
    }
    if (value instanceof String text) {
      return quoted(text);
    }
    if (value instanceof Number || value instanceof Boolean) {
      return value.toString();
    }
    throw new IllegalArgumentException("no JSON for " + value);
  }

  private String closed(String open, String pad, List<String> entries, String close) {
    return entries.isEmpty()
        ? open + close
        : open + pad + String.join("," + afterComma, entries) + pad + close;
  }
}
