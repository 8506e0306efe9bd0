package seamsoak.steel;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import seamsoak.unit.Printable;

/** Analyses as people write them. */
final class AnalysisText {
  /** Carbon of cementite, wt%: no steel holds more. */
  static final double CEMENTITE_CARBON = 6.67;

  /** So much of it is repeated when it is wrong. */
  private static final int SHOWN = 60;

  private static final String IRON = "Fe";
  private static final String NUMBER = "(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)";
  private static final Pattern PAIR =
      Pattern.compile("([A-Za-z]+)\\s*=?\\s*(" + NUMBER + ")\\s*%?");
  private static final Pattern GAP = Pattern.compile("[\\s,;]*");

  // A grade such as C75 or W1 is a symbol and a whole number too. An analysis names at least two
  // elements or has a decimal point.
  private static final Pattern WRITTEN =
      Pattern.compile(
          "[A-Za-z]{1,2}\\s*=?\\s*(?:\\d*[.,]\\d.*|\\d+\\s*%.*|\\d+[\\s,;]*[A-Za-z]{1,2}\\s*=?\\s*"
              + NUMBER
              + ".*)",
          Pattern.DOTALL);

  private AnalysisText() {}

  /** Whether the text is meant as an analysis rather than as the name of a grade. */
  static boolean looksWritten(String text) {
    return text.strip().equalsIgnoreCase(IRON) || WRITTEN.matcher(text.strip()).matches();
  }

  static Composition parse(String text) {
    String all = text.strip();
    EnumMap<Element, Double> percent = new EnumMap<>(Element.class);
    if (all.equalsIgnoreCase(IRON)) {
      return Composition.of(percent);
    }
    Matcher pair = PAIR.matcher(all);
    Matcher gap = GAP.matcher(all);
    int at = 0;
    while (at < all.length()) {
      if (!pair.find(at) || pair.start() != at) {
        throw wrong(all, "cannot be read from '" + Printable.of(all.substring(at), SHOWN) + "' on");
      }
      Element element = element(all, pair.group(1));
      if (percent.put(element, Double.valueOf(pair.group(2).replace(',', '.'))) != null) {
        throw wrong(all, "names " + element.symbol() + " twice");
      }
      at = pair.end();
      if (gap.find(at) && gap.start() == at) {
        at = gap.end();
      }
    }
    if (percent.isEmpty()) {
      throw wrong(all, "is blank");
    }
    double carbon = percent.getOrDefault(Element.C, 0.0);
    if (carbon > CEMENTITE_CARBON) {
      throw wrong(all, "has " + number(carbon) + " % C, more than cementite holds");
    }
    try {
      return Composition.of(percent);
    } catch (IllegalArgumentException e) {
      throw wrong(all, "is impossible (" + e.getMessage() + ")");
    }
  }

  static String format(Composition analysis) {
    String text =
        analysis.elements().stream()
            .map(e -> e.symbol() + number(analysis.percent(e)))
            .collect(Collectors.joining(" "));
    return text.isEmpty() ? IRON : text;
  }

  private static Element element(String all, String symbol) {
    if (symbol.equalsIgnoreCase(IRON)) {
      throw wrong(all, "gives iron a number; leave it out, it is the rest");
    }
    return Element.of(symbol)
        .orElseThrow(
            () ->
                wrong(
                    all,
                    "names '"
                        + Printable.of(symbol, SHOWN)
                        + "'; the elements known here are "
                        + Arrays.stream(Element.values())
                            .map(Element::symbol)
                            .collect(Collectors.joining(", "))));
  }

  private static String number(double percent) {
    return BigDecimal.valueOf(percent).stripTrailingZeros().toPlainString();
  }

  private static IllegalArgumentException wrong(String all, String what) {
    return new IllegalArgumentException(
        "the analysis '"
            + Printable.of(all, SHOWN)
            + "' "
            + what
            + "; write weight percents as in C0.84 Mn0.75 Si0.22");
  }
}
