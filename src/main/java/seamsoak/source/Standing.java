package seamsoak.source;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Set;
import java.util.stream.Collectors;

/** How well a number is known to be what its source prints. */
public enum Standing {
  /** Read in print, in the source or in a secondary copy of it. */
  SEEN("seen"),
  /** Part of it read in print, the rest from memory. */
  PARTLY("partly seen"),
  /** Known, not found in print. */
  MEMORY("from memory"),
  /** Worked out from stated inputs. */
  COMPUTED("computed"),
  /** A fact of the trade. */
  COMMON_PRACTICE("common practice, no source"),
  /** Our own choice, adjustable. */
  JUDGEMENT("judgement, no source");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /**
   * The standing of several numbers taken as one: partly seen when some were read in print, else
   * the weakest, so that a number from memory is never called computed.
   */
  public static Standing together(Set<Standing> all) {
    if (all.size() == 1) {
      return all.iterator().next();
    }
    if (all.contains(SEEN) || all.contains(PARTLY)) {
      return PARTLY;
    }
    return all.contains(MEMORY)
        ? MEMORY
        : all.stream().max(Comparator.naturalOrder()).orElseThrow();
  }

  /** The words that stand in tables and answers. */
  public String words() {
    return words;
  }

  /** All the words, for a message. */
  static String allWords() {
    return Arrays.stream(values()).map(s -> "'" + s.words + "'").collect(Collectors.joining(", "));
  }

  /** The standing for the words of a table; {@code IllegalArgumentException} for unknown ones. */
  public static Standing of(String words) {
    for (Standing s : values()) {
      if (s.words.equals(words)) {
        return s;
      }
    }
    throw new IllegalArgumentException("unknown standing '" + words + "'");
  }
}
