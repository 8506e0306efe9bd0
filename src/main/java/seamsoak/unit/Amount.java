package seamsoak.unit;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and the unit written after it.
 *
 * @param value the number; of a fraction or mixed number its value
 * @param unit what follows, lower case, empty when nothing does
 */
record Amount(double value, String unit) {
  private static final String DECIMAL = "([0-9]+\\.?[0-9]*|\\.[0-9]+)";
  private static final Pattern PLAIN = Pattern.compile("([+-]?)\\s*" + DECIMAL + "\\s*(.*)");
  private static final Pattern FRACTION =
      Pattern.compile(
          "([+-]?)\\s*(?:([0-9]+)(?:\\s*-\\s*|\\s+))?([0-9]+)\\s*/\\s*([0-9]+)\\s*(.*)");

  /** Reads a plain decimal number with its unit; 1100/1150 is two temperatures, not a fraction. */
  static Amount read(String text, QuantityText accepted) {
    String tidy = accepted.tidy(text);
    Matcher m = PLAIN.matcher(tidy);
    if (!m.matches()) {
      throw accepted.refuse(text, "does not begin with a number");
    }
    return of(text, accepted, m.group(1), Double.parseDouble(m.group(2)), m.group(3));
  }

  /** Reads a decimal number, a fraction or a mixed number (1 1/2, 1-1/2) with its unit. */
  static Amount readFraction(String text, QuantityText accepted) {
    Matcher m = FRACTION.matcher(accepted.tidy(text));
    if (!m.matches()) {
      return read(text, accepted);
    }
    double above = Double.parseDouble(m.group(3));
    double below = Double.parseDouble(m.group(4));
    if (below == 0) {
      throw accepted.refuse(text, "divides by zero");
    }
    if (m.group(2) != null && above >= below) {
      throw accepted.refuse(text, "is a mixed number whose fraction is not below one");
    }
    double whole = m.group(2) == null ? 0 : Double.parseDouble(m.group(2));
    return of(text, accepted, m.group(1), whole + above / below, m.group(5));
  }

  /** With a unit for a bare number. */
  Amount or(String bare) {
    return unit.isEmpty() ? new Amount(value, bare) : this;
  }

  private static Amount of(
      String text, QuantityText accepted, String sign, double size, String unit) {
    if (!Double.isFinite(size)) {
      throw accepted.refuse(text, "is no size that metal can have");
    }
    return new Amount(sign.equals("-") ? -size : size, unit.strip().toLowerCase(Locale.ROOT));
  }
}
