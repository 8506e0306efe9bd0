package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.Nearest;
import seamsoak.unit.Angle;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Printable;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** Readers of single values, each with the bounds beyond which a value can only be a slip. */
final class Values {
  private static final double LONGEST_METRES = 10;
  private static final double COLDEST_CELSIUS = 100;
  private static final double HOTTEST_CELSIUS = 1600;
  private static final double LONGEST_HOURS = 48;
  private static final double FLATTEST_DEGREES = 10;
  private static final double STEEPEST_DEGREES = 80;

  private static final double COLDEST_BATH_CELSIUS = 0;
  private static final double HOTTEST_BATH_CELSIUS = 900;
  private static final double SOFTEST_HRC = 40;
  private static final double HARDEST_HRC = 67;

  private Values() {}

  /** A length above zero. */
  static Length size(JsonValue value, String name) {
    Length length = depth(value, name);
    require(length.metres() > 0, value, name, "it should be above zero");
    return length;
  }

  /** A length that may be zero. */
  static Length depth(JsonValue value, String name) {
    Length length = quantity(value, name, Length::parse);
    require(length.metres() <= LONGEST_METRES, value, name, "10 m is the most");
    return length;
  }

  static Temperature temperature(JsonValue value, String name) {
    Temperature temperature = quantity(value, name, Temperature::parse);
    double celsius = temperature.celsius();
    require(
        celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS + 1e-9,
        value,
        name,
        "a heat is between 100 C (212 F) and 1600 C (2912 F)");
    return temperature;
  }

  /** Something to cool in. */
  static Temperature bath(JsonValue value, String name) {
    Temperature temperature = quantity(value, name, Temperature::parse);
    double celsius = temperature.celsius();
    require(
        celsius >= COLDEST_BATH_CELSIUS && celsius <= HOTTEST_BATH_CELSIUS + 1e-9,
        value,
        name,
        "a bath is between 0 C (32 F) and 900 C (1652 F)");
    return temperature;
  }

  /** How fast a kiln climbs. */
  static HeatingRate rate(JsonValue value, String name) {
    return quantity(value, name, HeatingRate::parse);
  }

  /** What a blade is tempered to; softer is no blade, harder is no temper. */
  static Hardness hardness(JsonValue value, String name) {
    Hardness hardness = quantity(value, name, Hardness::parse);
    require(
        hardness.hrc() >= SOFTEST_HRC && hardness.hrc() <= HARDEST_HRC,
        value,
        name,
        "a tempered blade has 40 to 67 HRC");
    return hardness;
  }

  /** A time above zero. */
  static TimeSpan time(JsonValue value, String name) {
    TimeSpan time = quantity(value, name, TimeSpan::parse);
    require(
        time.seconds() > 0 && time.hours() <= LONGEST_HOURS,
        value,
        name,
        "it should be above zero and at most 48 h");
    return time;
  }

  /** The angle of a cut; flatter ones waste the bar, steeper ones no press can close. */
  static Angle cut(JsonValue value, String name) {
    Angle angle = quantity(value, name, Angle::parse);
    require(
        angle.degrees() >= FLATTEST_DEGREES - 1e-9 && angle.degrees() <= STEEPEST_DEGREES + 1e-9,
        value,
        name,
        "a cut for tiles is between 10 and 80 deg to the bar's length");
    return angle;
  }

  static Percent share(JsonValue value, String name) {
    return quantity(value, name, Percent::parse);
  }

  /** Carbon missing at a line: above zero, and no more than steel has. */
  static Percent dip(JsonValue value, String name) {
    Percent percent = quantity(value, name, Percent::parse);
    require(
        percent.value() > 0 && percent.value() <= 2,
        value,
        name,
        "it should be above zero and at most 2 %");
    return percent;
  }

  /** A whole number, written bare. */
  static Fields.Reader<Integer> count(int least, int most) {
    return (value, name) -> {
      String expected = "it should be a whole number from " + least + " to " + most;
      if (!(value instanceof NumberValue number)) {
        throw new Fault(value.place(), name + " is " + described(value), expected);
      }
      boolean whole = number.value() == Math.rint(number.value());
      require(whole && number.value() >= least && number.value() <= most, value, name, expected);
      return (int) number.value();
    };
  }

  /** One of the words of an enum. */
  static <E extends Enum<E>> Fields.Reader<E> choice(Class<E> type) {
    return (value, name) -> {
      List<String> words = Stream.of(type.getEnumConstants()).map(e -> word(e)).toList();
      return type.getEnumConstants()[words.indexOf(word(value, name, words))];
    };
  }

  /** How a choice is written: {@code DRY_ICE} as {@code dry ice}. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** One of the words given. */
  static String word(JsonValue value, String name, List<String> words) {
    if (value instanceof TextValue text && words.contains(text.text())) {
      return text.text();
    }
    String all = "it is one of " + String.join(", ", words);
    String expected =
        value instanceof TextValue text
            ? Nearest.to(text.text(), words).map(w -> "did you mean '" + w + "'?").orElse(all)
            : all;
    throw new Fault(value.place(), name + " is " + described(value), expected);
  }

  /** A text of the smith's own, without control characters that would upset a terminal. */
  static String text(JsonValue value, String name) {
    if (!(value instanceof TextValue text)) {
      throw new Fault(value.place(), name + " is " + value.kind(), "it should be a text");
    }
    if (text.text().isBlank()) {
      throw new Fault(value.place(), name + " is blank", "write something or leave it out");
    }
    if (text.text().length() > 500 || !Printable.is(text.text())) {
      throw new Fault(
          value.place(),
          name + " is too long or holds control characters",
          "write one line of at most 500 letters");
    }
    return text.text().strip();
  }

  /** A list of at least one. */
  static <T> Fields.Reader<List<T>> list(int most, Fields.Reader<T> each) {
    return (value, name) -> {
      if (!(value instanceof ListValue list)) {
        throw new Fault(
            value.place(), name + " is " + described(value), "it should be a list in brackets");
      }
      if (list.items().isEmpty() || list.items().size() > most) {
        throw new Fault(
            value.place(),
            name + " has " + list.items().size() + " entries",
            "it should have 1 to " + most);
      }
      List<T> read = new ArrayList<>();
      for (JsonValue item : list.items()) {
        read.add(each.read(item, name));
      }
      return List.copyOf(read);
    };
  }

  static String described(JsonValue value) {
    return value instanceof TextValue text ? "'" + Fault.shown(text.text()) + "'" : value.kind();
  }

  /** A bare number goes to the parser too, whose sentence shows the accepted forms. */
  private static <T> T quantity(JsonValue value, String name, Function<String, T> parse) {
    String written;
    if (value instanceof TextValue text) {
      written = text.text();
    } else if (value instanceof NumberValue number) {
      written = number.digits();
    } else {
      throw new Fault(
          value.place(),
          name + " is " + value.kind(),
          "it should be a quantity with its unit in double quotes");
    }
    try {
      return parse.apply(written);
    } catch (IllegalArgumentException e) {
      throw new Fault(value.place(), name + " " + e.getMessage());
    }
  }

  private static void require(boolean holds, JsonValue value, String name, String expected) {
    if (!holds) {
      throw new Fault(value.place(), name + " is " + described(value), expected);
    }
  }
}
