package seamsoak.words;

import java.util.Locale;

/** How a sentence begins and ends. */
public final class Sentence {
  private Sentence() {}

  /** With a capital. */
  public static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Without it, for the middle of a sentence. */
  public static String small(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  /** With a full stop, where it has none. */
  public static String ended(String words) {
    return words.endsWith(".") || words.endsWith("?") ? words : words + ".";
  }
}
