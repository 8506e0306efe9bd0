package seamsoak.page;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A form that brings a file along, as browsers send it.
 *
 * @param fields by their names
 * @param file the first that was sent, if any
 */
record Multipart(Map<String, String> fields, Optional<Sent> file) {
  private static final Pattern TYPE =
      Pattern.compile("multipart/form-data; ?boundary=\"?([0-9A-Za-z'()+_,./:=?-]{1,70})\"?");
  private static final Pattern NAME = Pattern.compile("(?<=[; ])name=\"([^\"\r\n]{1,60})\"");
  private static final Pattern FILE = Pattern.compile("(?<=[; ])filename=\"([^\"\r\n]{0,255})\"");
  private static final int MOST_PARTS = 40;
  private static final int MOST_HEAD = 2000;

  /**
   * A file that was sent.
   *
   * @param name as its owner calls it; no path of ours
   */
  record Sent(String name, byte[] bytes) {}

  /** What stands between the parts, where it is such a form. */
  static Optional<String> boundary(String type) {
    Matcher m = TYPE.matcher(type);
    return m.matches() ? Optional.of(m.group(1)) : Optional.empty();
  }

  /** Reads one; {@code IllegalArgumentException} for what no browser sends. */
  static Multipart of(byte[] body, String boundary) {
    byte[] mark = ("\r\n--" + boundary).getBytes(StandardCharsets.ISO_8859_1);
    byte[] blank = "\r\n\r\n".getBytes(StandardCharsets.ISO_8859_1);
    Map<String, String> fields = new LinkedHashMap<>();
    Optional<Sent> file = Optional.empty();
    int at = mark.length - 2; // before the first there is no end of a line
    if (!starts(body, Arrays.copyOfRange(mark, 2, mark.length), 0)) {
      throw new IllegalArgumentException("no part");
    }
    for (int parts = 0; ; parts++) {
      if (starts(body, "--".getBytes(StandardCharsets.ISO_8859_1), at)) {
        return new Multipart(fields, file);
      }
      int head = index(body, blank, at);
      int end = head < 0 ? -1 : index(body, mark, head + blank.length);
      if (end < 0 || parts > MOST_PARTS || head - at > MOST_HEAD) {
        throw new IllegalArgumentException("a part without an end");
      }
      String said = new String(body, at, head - at, StandardCharsets.UTF_8);
      Matcher name = NAME.matcher(said);
      if (!name.find()) {
        throw new IllegalArgumentException("a part without a name");
      }
      byte[] content = Arrays.copyOfRange(body, head + blank.length, end);
      Matcher named = FILE.matcher(said);
      if (named.find()) {
        if (file.isEmpty() && content.length > 0) {
          String own = named.group(1).replaceFirst(".*[/\\\\]", "");
          file = Optional.of(new Sent(own.isBlank() ? "log" : own, content));
        }
      } else if (fields.put(name.group(1), new String(content, StandardCharsets.UTF_8)) != null) {
        throw new IllegalArgumentException("a field stands twice");
      }
      at = end + mark.length;
    }
  }

  private static boolean starts(byte[] body, byte[] with, int at) {
    return at >= 0
        && at + with.length <= body.length
        && Arrays.equals(body, at, at + with.length, with, 0, with.length);
  }

  private static int index(byte[] body, byte[] of, int from) {
    for (int i = from; i + of.length <= body.length; i++) {
      if (body[i] == of[0] && starts(body, of, i)) {
        return i;
      }
    }
    return -1;
  }
}
