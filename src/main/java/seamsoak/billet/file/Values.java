package seamsoak.billet.file;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.unit.Printable;

/** Readers of single values that are no quantities. */
final class Values {
  /** A text of the smith's own. */
  static final Reader<String> TEXT = Values::text;

  private Values() {}

  /** A whole number, bare or as a text. */
  static Reader<Integer> count(int least, int most) {
    return entry -> {
      String expected = "it should be a whole number from " + least + " to " + most;
      double value = number(entry.value());
      if (!(value == Math.rint(value) && value >= least && value <= most)) {
        throw entry.refused(expected);
      }
      return (int) value;
    };
  }

  private static String written(JsonValue value) {
    return value instanceof TextValue text
        ? text.text()
        : value instanceof NumberValue number ? number.digits() : "";
  }

  /** No number at all where it is none. */
  private static double number(JsonValue value) {
    if (value instanceof NumberValue number) {
      return number.value();
    }
    String digits = written(value).strip();
    return digits.matches("[0-9]{1,9}") ? Double.parseDouble(digits) : Double.NaN;
  }

  /** A number between two, written bare. */
  static Reader<Double> number(double least, double most) {
    return entry -> {
      String expected =
          "it should be a number from "
              + BigDecimal.valueOf(least).stripTrailingZeros().toPlainString()
              + " to "
              + BigDecimal.valueOf(most).stripTrailingZeros().toPlainString();
      if (entry.value() instanceof NumberValue number
          && number.value() >= least
          && number.value() <= most) {
        return number.value();
      }
      throw entry.refused(expected);
    };
  }

  /** A day of the calendar. */
  static LocalDate day(Entry entry) {
    try {
      return LocalDate.parse(entry.value() instanceof TextValue text ? text.text().strip() : "");
    } catch (DateTimeParseException e) {
      throw entry.refused("it should be a day such as \"2026-11-20\": year, month, day");
    }
  }

  /** One of the words of an enum. */
  static <E extends Enum<E>> Reader<E> choice(Class<E> type) {
    return choice(List.of(type.getEnumConstants()));
  }

  /** One of the words of those constants. */
  static <E extends Enum<E>> Reader<E> choice(List<E> choices) {
    return new Choice<>(choices);
  }

  /** A text of the smith's own, without control characters that would upset a terminal. */
  static String text(Entry entry) {
    if (!(entry.value() instanceof TextValue text)) {
      throw entry.fault(entry.name() + " is " + entry.value().kind(), "it should be a text");
    }
    if (text.text().isBlank()) {
      throw entry.fault(entry.name() + " is blank", "write something or leave it out");
    }
    if (text.text().length() > 500 || !Printable.is(text.text())) {
      throw entry.fault(
          entry.name() + " is too long or holds control characters",
          "write one line of at most 500 letters");
    }
    return text.text().strip();
  }
}
