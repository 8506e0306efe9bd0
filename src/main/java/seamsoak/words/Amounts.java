package seamsoak.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/**
 * Numbers and choices within a sentence or a cell, as a shop reads them: temperatures to 5 degrees,
 * whole minutes, thousandths of an inch, hundredths of a millimetre.
 *
 * @param units that are shown
 */
public record Amounts(UnitSystem units) {
  private static final MathContext SIX_DIGITS = new MathContext(6);

  public String heat(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  /** A range, or one temperature where both ends read alike. */
  public String between(double lowC, double highC) {
    return heat(lowC) + (heat(lowC).equals(heat(highC)) ? "" : " to " + heat(highC));
  }

  public String between(TemperatureRange range) {
    return between(range.lowC(), range.highC());
  }

  /** A difference as a shop can tell it: to 10 F and 5 C. */
  public String apart(double kelvin) {
    return units.show(10 * Math.round(kelvin * 1.8 / 10) + " F", 5 * Math.round(kelvin / 5) + " C");
  }

  /** From one whole number to another, or one where both read alike. */
  public static String range(double low, double high) {
    String from = number(low, 0);
    String to = number(high, 0);
    return from.equals(to) ? from : from + " to " + to;
  }

  /**
   * Exactly that many decimals; rounded from six digits, so that 0.965 reads the same before and
   * after a trace has left.
   */
  public static String number(double value, int decimals) {
    BigDecimal digits = BigDecimal.valueOf(value).round(SIX_DIGITS);
    return digits.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  public static String percent(double value) {
    return number(value, 2);
  }

  /** As many decimals as it has. */
  public static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** With a point, wherever it runs. */
  public static String format(String form, Object... of) {
    return String.format(Locale.ROOT, form, of);
  }

  /** A choice as a billet file has it. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }

  public String length(double metres) {
    return new Length(metres).format(units);
  }

  public String millimetres(double millimetres) {
    return Length.ofMillimetres(millimetres).format(units);
  }

  /** A time that somebody stated. */
  public String stated(double minutes) {
    return TimeSpan.ofMinutes(minutes).format(units);
  }

  /** A time that was computed. */
  public String time(double minutes) {
    return minutes > 0 && minutes < 0.5
        ? "under 1 min"
        : TimeSpan.ofMinutes(Math.round(minutes)).format(units);
  }
}
