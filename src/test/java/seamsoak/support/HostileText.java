package seamsoak.support;

import java.nio.ByteBuffer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text of the tables of hostile inputs, with what cannot stand there spelled out. */
public final class HostileText {
  private static final Pattern REPEAT = Pattern.compile("<([0-9]{1,7})\\*([^<>]*)>");
  private static final Pattern ESCAPE = Pattern.compile("\\\\(u([0-9A-Fa-f]{4})|x([0-9A-F]{2})|.)");

  /** Raw bytes travel as characters that no test needs otherwise. */
  private static final char BYTES = '\uE000';

  private HostileText() {}

  public static String of(String written) {
    String text = written;
    for (Matcher m = REPEAT.matcher(text); m.find(); m = REPEAT.matcher(text)) {
      text =
          m.replaceAll(
              r -> Matcher.quoteReplacement(r.group(2).repeat(Integer.parseInt(r.group(1)))));
    }
    return ESCAPE.matcher(text).replaceAll(r -> Matcher.quoteReplacement(one(r)));
  }

  private static String one(MatchResult escape) {
    if (escape.group(2) != null) {
      return String.valueOf((char) Integer.parseInt(escape.group(2), 16));
    }
    if (escape.group(3) != null) {
      return String.valueOf((char) (BYTES + Integer.parseInt(escape.group(3), 16)));
    }
    return switch (escape.group(1)) {
      case "n" -> "\n";
      case "r" -> "\r";
      case "t" -> "\t";
      case "0" -> "\0";
      case "\\" -> "\\";
      default -> throw new IllegalArgumentException(escape.group());
    };
  }

  /** UTF-8 but for the raw bytes. */
  static byte[] bytes(String text) {
    ByteBuffer all = ByteBuffer.allocate(3 * text.length());
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= BYTES && c <= BYTES + 0xFF) {
        all.put(utf8(text.substring(from, i))).put((byte) (c - BYTES));
        from = i + 1;
      }
    }
    all.put(utf8(text.substring(from)));
    byte[] bytes = new byte[all.position()];
    all.flip().get(bytes);
    return bytes;
  }

  private static ByteBuffer utf8(String text) {
    try {
      return StandardCharsets.UTF_8
          .newEncoder()
          .onUnmappableCharacter(CodingErrorAction.REPORT)
          .encode(java.nio.CharBuffer.wrap(text));
    } catch (java.nio.charset.CharacterCodingException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
