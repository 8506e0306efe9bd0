package seamsoak.unit;

import java.text.Normalizer;

/**
 * What people may write for one kind of quantity: tidies their text and refuses it in one sentence
 * that shows what was found and what is accepted.
 *
 * @param examples the accepted forms, such as {@code a length such as 3/8" or 38 mm}
 */
record QuantityText(String examples) {
  private static final int LONGEST = 60;

  /** The text with typographic signs made plain; refused when it cannot be a quantity at all. */
  String tidy(String text) {
    if (text.length() > LONGEST) {
      throw refuse(text, "is too long for a quantity");
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      plain.append(plain(text.charAt(i)));
    }
    String tidy = plain.toString().strip();
    if (tidy.isEmpty()) {
      throw refuse(text, "is blank");
    }
    if (tidy.indexOf(',') >= 0) {
      throw refuse(
          text, "has a comma, which could be a decimal or a thousands mark (use a decimal point)");
    }
    return tidy;
  }

  /** Phones and word processors turn 1/2, - and " into single typographic signs. */
  private static String plain(char c) {
    return switch (c) {
      case '\u2013', '\u2212' -> "-";
      case '\u201C', '\u201D', '\u2033' -> "\"";
      case '\u2018', '\u2019', '\u2032' -> "'";
      case '\u00BA' -> "°";
      case '\u2103' -> "°C";
      case '\u2109' -> "°F";
      case '\u00B5', '\u03BC' -> "u";
      case '\u2044' -> "/";
      default -> {
        if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
          yield " ";
        }
        if (c < 127) {
          yield String.valueOf(c);
        }
        String spelled = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC);
        yield spelled.indexOf('\u2044') > 0 ? " " + spelled.replace('\u2044', '/') : "" + c;
      }
    };
  }

  /** The exception that says why the text was refused. */
  Refused refuse(String text, String why) {
    return refuse(text, why, false);
  }

  private Refused refuse(String text, String why, boolean bare) {
    String shown = printable(text);
    if (shown.length() > LONGEST) {
      shown = shown.substring(0, LONGEST - 20) + "...";
    }
    return new Refused("'" + shown + "' " + why, "write " + examples, bare);
  }

  /** The exception for a unit that does not belong to this kind of quantity, or for none. */
  Refused refuseUnit(String text, String unit) {
    return unit.isEmpty()
        ? refuse(text, "has no unit", true)
        : refuse(text, "has '" + printable(unit) + "' where its unit should stand");
  }

  private static String printable(String text) {
    return Printable.of(text).strip();
  }

  /** Guards a record's value: no NaN or infinity travels on as a quantity. */
  static double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(value + " is not a quantity");
    }
    return value;
  }
}
