package seamsoak.billet.file;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.unit.Angle;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Refused;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** Readers of quantities, each with the bounds beyond which one can only be a slip. */
final class Quantities {
  private static final double LONGEST_METRES = 10;
  private static final Bound COLDEST = new Bound(100, "212 F", "100 C");
  private static final Bound HOTTEST = new Bound(1600, "2912 F", "1600 C");
  private static final double LONGEST_HOURS = 48;
  private static final double FLATTEST_DEGREES = 10;
  private static final double STEEPEST_DEGREES = 80;

  private static final Bound COLDEST_BATH = new Bound(0, "32 F", "0 C");
  private static final Bound HOTTEST_BATH = new Bound(900, "1652 F", "900 C");
  private static final double SOFTEST_HRC = 40;
  private static final double HARDEST_HRC = 67;

  private static final String UNITS_MISSING =
      ", or begin the file with \"units\": \"us\" or \"metric\"";

  private Quantities() {}

  /** A temperature that none may pass, and its words. */
  private record Bound(double celsius, String us, String metric) {
    /** In the units of the file, in both where it has none. */
    String shown(Optional<UnitSystem> units) {
      return units.map(u -> u.show(us, metric)).orElse(metric + " (" + us + ")");
    }
  }

  /** A length above zero. */
  static Length size(Entry entry) {
    Length length = depth(entry);
    require(length.metres() > 0, entry, "it should be above zero");
    return length;
  }

  /** A length that may be zero. */
  static Length depth(Entry entry) {
    Optional<Integer> gauge = Gauges.number(written(entry));
    Length length =
        gauge.isPresent()
            ? ofGauge(entry, gauge.get())
            : quantity(entry, Length::parse, Length::parse);
    UnitSystem units = entry.reading().units().orElseGet(() -> UnitSystem.ofLength(written(entry)));
    require(length.metres() <= LONGEST_METRES, entry, units.show("32 ft", "10 m") + " is the most");
    return length;
  }

  private static Length ofGauge(Entry entry, int number) {
    Gauges gauges = entry.reading().names().gauges();
    return gauges.of(number).orElseThrow(() -> entry.refused(gauges.known()));
  }

  /** A heat. */
  static Temperature temperature(Entry entry) {
    return within(entry, COLDEST, HOTTEST, "a heat");
  }

  /** Something to cool in. */
  static Temperature bath(Entry entry) {
    return within(entry, COLDEST_BATH, HOTTEST_BATH, "a bath");
  }

  private static Temperature within(Entry entry, Bound low, Bound high, String what) {
    Temperature read = quantity(entry, Temperature::parse, Temperature::parse);
    Optional<UnitSystem> units = entry.reading().units();
    require(
        read.celsius() >= low.celsius && read.celsius() <= high.celsius + 1e-9,
        entry,
        what + " is between " + low.shown(units) + " and " + high.shown(units));
    return read;
  }

  /** How fast a kiln climbs. */
  static HeatingRate rate(Entry entry) {
    return quantity(entry, HeatingRate::parse);
  }

  /** What a blade is tempered to; softer is no blade, harder is no temper. */
  static Hardness hardness(Entry entry) {
    Hardness hardness = quantity(entry, Hardness::parse, Hardness::parse);
    require(
        hardness.hrc() >= SOFTEST_HRC && hardness.hrc() <= HARDEST_HRC,
        entry,
        "a tempered blade has 40 to 67 HRC");
    return hardness;
  }

  /** A time above zero. */
  static TimeSpan time(Entry entry) {
    TimeSpan time = quantity(entry, TimeSpan::parse, TimeSpan::parse);
    require(
        time.seconds() > 0 && time.hours() <= LONGEST_HOURS,
        entry,
        "it should be above zero and at most 48 h");
    return time;
  }

  /** The angle of a cut; flatter ones waste the bar, steeper ones no press can close. */
  static Angle cut(Entry entry) {
    Angle angle = quantity(entry, Angle::parse, Angle::parse);
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

  /** A quantity whose unit is none of a system, so that it cannot go without. */
  private static <T> T quantity(Entry entry, Function<String, T> parse) {
    return told(entry, "", () -> parse.apply(written(entry)));
  }

  /**
   * A quantity; a bare number takes the unit of the file, if that has any.
   *
   * @param parse what is written with its unit
   * @param bare what may be written without
   */
  private static <T> T quantity(
      Entry entry, Function<String, T> parse, BiFunction<String, UnitSystem, T> bare) {
    String written = written(entry);
    Optional<UnitSystem> units = entry.reading().units();
    return units
        .map(u -> told(entry, "", () -> bare.apply(written, u)))
        .orElseGet(() -> told(entry, UNITS_MISSING, () -> parse.apply(written)));
  }

  private static <T> T told(Entry entry, String ifBare, Supplier<T> parsed) {
    try {
      return parsed.get();
    } catch (Refused e) {
      if (e.bare() && entry.reading().unitsToldWrong()) {
        throw new Fault(List.of());
      }
      throw entry.fault(entry.name() + " " + e.found(), e.expected() + (e.bare() ? ifBare : ""));
    }
  }

  private static String written(Entry entry) {
    if (entry.value() instanceof TextValue text) {
      return text.text();
    }
    if (entry.value() instanceof NumberValue number) {
      return number.digits();
    }
    throw entry.fault(
        entry.name() + " is " + entry.value().kind(),
        "it should be a quantity with its unit in double quotes");
  }

  private static void require(boolean holds, Entry entry, String expected) {
    if (!holds) {
      throw entry.refused(expected);
    }
  }
}
