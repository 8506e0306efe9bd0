package seamsoak.steel;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How deep a grade hardens, from least to most; a judgement, no source. */
public enum Hardenability {
  NONE("none"),
  VERY_SHALLOW("very shallow"),
  SHALLOW("shallow"),
  SHALLOW_MEDIUM("shallow-medium"),
  MEDIUM("medium"),
  MEDIUM_DEEP("medium-deep"),
  DEEP("deep"),
  /** Hardens when it cools in air. */
  AIR("air");

  private final String words;

  Hardenability(String words) {
    this.words = words;
  }

  /** The words that stand in the table. */
  public String words() {
    return words;
  }

  /** The class for the words of the table; {@code IllegalArgumentException} for unknown ones. */
  static Hardenability of(String words) {
    return Arrays.stream(values())
        .filter(h -> h.words.equals(words))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "unknown hardenability '"
                        + words
                        + "', the words are "
                        + Arrays.stream(values())
                            .map(Hardenability::words)
                            .collect(Collectors.joining(", "))));
  }
}
