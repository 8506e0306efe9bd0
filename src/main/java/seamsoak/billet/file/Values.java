package seamsoak.billet.file;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.Nearest;
import seamsoak.unit.Angle;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Printable;
import seamsoak.unit.Refused;
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
  static Length size(Entry entry) {
    Length length = depth(entry);
    require(length.metres() > 0, entry, "it should be above zero");
    return length;
  }

  /** A length that may be zero. */
  static Length depth(Entry entry) {
    Length length = quantity(entry, Length::parse);
    require(length.metres() <= LONGEST_METRES, entry, "10 m is the most");
    return length;
  }

  static Temperature temperature(Entry entry) {
    Temperature temperature = quantity(entry, Temperature::parse);
    double celsius = temperature.celsius();
    require(
        celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS + 1e-9,
        entry,
        "a heat is between 100 C (212 F) and 1600 C (2912 F)");
    return temperature;
  }

  /** Something to cool in. */
  static Temperature bath(Entry entry) {
    Temperature temperature = quantity(entry, Temperature::parse);
    double celsius = temperature.celsius();
    require(
        celsius >= COLDEST_BATH_CELSIUS && celsius <= HOTTEST_BATH_CELSIUS + 1e-9,
        entry,
        "a bath is between 0 C (32 F) and 900 C (1652 F)");
    return temperature;
  }

  /** How fast a kiln climbs. */
  static HeatingRate rate(Entry entry) {
    return quantity(entry, HeatingRate::parse);
  }

  /** What a blade is tempered to; softer is no blade, harder is no temper. */
  static Hardness hardness(Entry entry) {
    Hardness hardness = quantity(entry, Hardness::parse);
    require(
        hardness.hrc() >= SOFTEST_HRC && hardness.hrc() <= HARDEST_HRC,
        entry,
        "a tempered blade has 40 to 67 HRC");
    return hardness;
  }

  /** A time above zero. */
  static TimeSpan time(Entry entry) {
    TimeSpan time = quantity(entry, TimeSpan::parse);
    require(
        time.seconds() > 0 && time.hours() <= LONGEST_HOURS,
        entry,
        "it should be above zero and at most 48 h");
    return time;
  }

  /** The angle of a cut; flatter ones waste the bar, steeper ones no press can close. */
  static Angle cut(Entry entry) {
    Angle angle = quantity(entry, Angle::parse);
    require(
        angle.degrees() >= FLATTEST_DEGREES - 1e-9 && angle.degrees() <= STEEPEST_DEGREES + 1e-9,
        entry,
        "a cut for tiles is between 10 and 80 deg to the bar's length");
    return angle;
  }

  static Percent share(Entry entry) {
    return quantity(entry, Percent::parse);
  }

  /** Carbon missing at a line: above zero, and no more than steel has. */
  static Percent dip(Entry entry) {
    Percent percent = quantity(entry, Percent::parse);
    require(
        percent.value() > 0 && percent.value() <= 2,
        entry,
        "it should be above zero and at most 2 %");
    return percent;
  }

  /** A whole number, written bare. */
  static Reader<Integer> count(int least, int most) {
    return entry -> {
      String expected = "it should be a whole number from " + least + " to " + most;
      if (!(entry.value() instanceof NumberValue number)) {
        throw entry.refused(expected);
      }
      boolean whole = number.value() == Math.rint(number.value());
      require(whole && number.value() >= least && number.value() <= most, entry, expected);
      return (int) number.value();
    };
  }

  /** One of the words of an enum. */
  static <E extends Enum<E>> Reader<E> choice(Class<E> type) {
    return entry -> {
      List<String> words = Stream.of(type.getEnumConstants()).map(e -> word(e)).toList();
      return type.getEnumConstants()[words.indexOf(word(entry, words))];
    };
  }

  /** How a choice is written: {@code DRY_ICE} as {@code dry ice}. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** One of the words given. */
  private static String word(Entry entry, List<String> words) {
    if (entry.value() instanceof TextValue text && words.contains(text.text())) {
      return text.text();
    }
    String all = "it is one of " + String.join(", ", words);
    throw entry.refused(
        entry.value() instanceof TextValue text
            ? Nearest.to(text.text(), words).map(w -> "did you mean '" + w + "'?").orElse(all)
            : all);
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

  /** A bare number goes to the parser too, whose sentence shows the accepted forms. */
  private static <T> T quantity(Entry entry, Function<String, T> parse) {
    String written;
    if (entry.value() instanceof TextValue text) {
      written = text.text();
    } else if (entry.value() instanceof NumberValue number) {
      written = number.digits();
    } else {
      throw entry.fault(
          entry.name() + " is " + entry.value().kind(),
          "it should be a quantity with its unit in double quotes");
    }
    try {
      return parse.apply(written);
    } catch (Refused e) {
      throw entry.fault(entry.name() + " " + e.found(), e.expected());
    }
  }

  private static void require(boolean holds, Entry entry, String expected) {
    if (!holds) {
      throw entry.refused(expected);
    }
  }
}
