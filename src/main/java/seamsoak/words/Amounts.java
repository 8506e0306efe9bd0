package seamsoak.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/**
 * Numbers and choices within a sentence.
 *
 * @param units that are shown
 */
record Amounts(UnitSystem units) {
  String heat(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  /** A range, or one temperature where both ends read alike. */
  String between(double lowC, double highC) {
    return heat(lowC) + (heat(lowC).equals(heat(highC)) ? "" : " to " + heat(highC));
  }

  /** A difference as a shop can tell it: to 10 F and 5 C. */
  String apart(double kelvin) {
    return units.show(10 * Math.round(kelvin * 1.8 / 10) + " F", 5 * Math.round(kelvin / 5) + " C");
  }

  /** Exactly that many decimals. */
  static String number(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** As many decimals as it has. */
  static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  static String format(String form, Object... of) {
    return String.format(Locale.ROOT, form, of);
  }

  /** A choice as a billet file has it. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }

  String length(double metres) {
    return new Length(metres).format(units);
  }
}
