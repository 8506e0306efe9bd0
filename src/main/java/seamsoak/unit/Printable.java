package seamsoak.unit;

import java.util.regex.Pattern;

/** Text of the user's as it may be shown again. */
public final class Printable {
  /**
   * What moves a terminal's cursor, ends a line, turns the order of letters, hides, or is no
   * character at all and so has no place in XML either.
   */
  private static final Pattern UPSETTING =
      Pattern.compile(
          "[\\p{Cc}\\p{Cs}\\p{Co}\\p{Zl}\\p{Zp}\\x{202A}-\\x{202E}\\x{2066}-\\x{2069}\\x{FEFF}"
              + "\\x{FFF9}-\\x{FFFB}\\x{FFFE}\\x{FFFF}\\x{E0000}-\\x{E007F}]");

  private Printable() {}

  /** Whether a text can be shown as it is. */
  public static boolean is(String text) {
    return isPlain(text) || !UPSETTING.matcher(text).find();
  }

  /** Most text by far, and quick to tell. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~') {
        return false;
      }
    }
    return true;
  }

  /** The text with a question mark for each character that cannot be shown. */
  public static String of(String text) {
    return UPSETTING.matcher(text).replaceAll("?");
  }

  /** The same, cut when it is long. */
  public static String of(String text, int longest) {
    return text.length() > longest ? of(text.substring(0, longest)) + "..." : of(text);
  }
}
