package seamsoak.unit;

/** Which units an answer shows: the shop's own first, the other in parentheses, or one alone. */
public enum UnitSystem {
  US,
  METRIC,
  /** US first, metric in parentheses. */
  BOTH;

  /** That of a length as somebody wrote it. */
  public static UnitSystem ofLength(String written) {
    return written.matches("(?s).*(in\\.?|inch|inches|ga|ga\\.|gauge|ft\\.?|foot|feet|\"|')\\s*")
        ? US
        : METRIC;
  }

  /** The unit of a bare number in a text that is in this system; US where it is in both. */
  String bare(String us, String metric) {
    return this == METRIC ? metric : us;
  }

  /** The one of two wordings that this system shows, or both. */
  public String show(String us, String metric) {
    return switch (this) {
      case US -> us;
      case METRIC -> metric;
      case BOTH -> us + " (" + metric + ")";
    };
  }
}
