package seamsoak.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.billet.Seen.Etched;
import seamsoak.data.Fault;
import seamsoak.data.Nearest;
import seamsoak.heatlog.DecimalMark;
import seamsoak.heatlog.Scale;
import seamsoak.heatlog.TimeUnit;
import seamsoak.property.forging.Atmosphere;
import seamsoak.state.SeamProfile.Moment;
import seamsoak.unit.Length;
import seamsoak.unit.Refused;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** Reads what stands after options. */
final class OptionValues {
  private static final int FEWEST_SAMPLES = 2;
  private static final int MOST_SAMPLES = 4096;

  private static final double COLDEST_CELSIUS = 100;
  private static final double HOTTEST_CELSIUS = 1600;

  /** A thinner foil evens out before it is hot. */
  private static final double THINNEST_METRES = 1e-5;

  private static final int LONGEST_SHARE = 60;
  private static final Pattern PARTS =
      Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*%?\\s*[:/]\\s*(\\d+(?:\\.\\d+)?)\\s*%?\\s*");
  private static final List<String> COVERS = List.of("flux", "oil", "paint");

  /** Where to listen; 0 for any that is free. */
  record Port(int number) {}

  private OptionValues() {}

  /** Whatever the options of these commands are declared as is read by one of the methods below. */
  static void register(CommandLine line) {
    line.registerConverter(Temperature.class, OptionValues::heat)
        .registerConverter(TimeSpan.class, OptionValues::time)
        .registerConverter(Length.class, OptionValues::thickness)
        .registerConverter(Layers.class, OptionValues::layers)
        .registerConverter(Share.class, OptionValues::share)
        .registerConverter(Path.class, OptionValues::name)
        .registerConverter(Port.class, OptionValues::port)
        .registerConverter(Exposure.class, OptionValues::edge)
        .registerConverter(Atmosphere.class, OptionValues::atmosphere)
        .registerConverter(Scale.class, OptionValues::scale)
        .registerConverter(TimeUnit.class, OptionValues::timeUnit)
        .registerConverter(
            DecimalMark.class, text -> choice(text, Arrays.asList(DecimalMark.values())))
        .registerConverter(Tip.class, text -> choice(text, Arrays.asList(Tip.values())))
        .registerConverter(
            UnitSystem.class, text -> choice(text, Arrays.asList(UnitSystem.values())))
        .registerConverter(AlongBar.class, OptionValues::alongBar)
        .registerConverter(FaceTime.class, OptionValues::faceTime)
        .registerConverter(Etched.class, text -> choice(text, Arrays.asList(Etched.values())))
        .registerConverter(int.class, OptionValues::samples)
        .registerConverter(Integer.class, OptionValues::number);
  }

  /** How far along a bar, from its left end. */
  record AlongBar(Length fromEnd) {}

  private static AlongBar alongBar(String text) {
    return new AlongBar(quantity(text, Length::parse));
  }

  /**
   * When a face is looked at.
   *
   * @param step number of a step, 0 for what follows
   * @param moment after the steps of the file
   */
  record FaceTime(int step, Moment moment) {}

  /** The words for such a time that are no number. */
  static final class FaceTimes implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("soak", "harden").iterator();
    }
  }

  /** The words for how a face is etched. */
  static final class EtchNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return words(Arrays.asList(Etched.values())).iterator();
    }
  }

  private static FaceTime faceTime(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "soak" -> new FaceTime(0, Moment.AFTER_SOAK);
      case "harden" -> new FaceTime(0, Moment.AFTER_SCHEDULE);
      default -> {
        if (text.matches("[1-9][0-9]{0,3}")) {
          yield new FaceTime(Integer.parseInt(text), Moment.BEFORE);
        }
        throw refuse(text, "is neither the number of a step nor soak nor harden");
      }
    };
  }

  private static Port port(String text) {
    if (text.matches("[1-9][0-9]{0,4}") && Integer.parseInt(text) <= 65535) {
      return new Port(Integer.parseInt(text));
    }
    throw new TypeConversionException(
        "'" + Fault.shown(text) + "' is no port; give a number from 1 to 65535");
  }

  /**
   * Thicknesses of two layers.
   *
   * @param first of the first steel
   * @param second of the second
   */
  record Layers(Length first, Length second) {}

  /**
   * How much of a stack is the first of two steels.
   *
   * @param ofFirst 0 to 1
   */
  record Share(double ofFirst) {}

  /** The words for how a face lies, for a shell to complete. */
  static final class EdgeNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("open", "covered").iterator();
    }
  }

  /** The words for what a face is held in, for a shell to complete. */
  static final class AtmosphereNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("still-air", "moist-air", "flame").iterator();
    }
  }

  /** The words for the units, for a shell to complete. */
  static final class UnitNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return words(Arrays.asList(UnitSystem.values())).iterator();
    }
  }

  /** A temperature of a fire. */
  private static Temperature heat(String text) {
    Temperature at = quantity(text, Temperature::parse);
    if (at.celsius() < COLDEST_CELSIUS || at.celsius() > HOTTEST_CELSIUS + 1e-9) {
      throw refuse(text, "is no heat; one is between 100 C (212 F) and 1600 C (2912 F)");
    }
    return at;
  }

  /** A time above zero. */
  private static TimeSpan time(String text) {
    TimeSpan time = quantity(text, TimeSpan::parse);
    if (time.seconds() <= 0) {
      throw refuse(text, "is no time in a fire");
    }
    return time;
  }

  private static Length thickness(String text) {
    Length length = quantity(text, Length::parse);
    if (length.metres() < THINNEST_METRES) {
      throw refuse(text, "is thinner than 0.01 mm");
    }
    return length;
  }

  /** One thickness or two. */
  private static Layers layers(String text) {
    List<Length> layers = Stream.of(text.split(",", -1)).map(OptionValues::thickness).toList();
    if (layers.size() > 2) {
      throw refuse(text, "names " + layers.size() + " layers; give one for both or A,B");
    }
    return new Layers(layers.get(0), layers.get(layers.size() - 1));
  }

  /** Two parts such as 60:40. */
  private static Share share(String text) {
    Matcher m = PARTS.matcher(text.length() > LONGEST_SHARE ? "" : text);
    double first = m.matches() ? Double.parseDouble(m.group(1)) : 0;
    double second = m.matches() ? Double.parseDouble(m.group(2)) : 0;
    if (first <= 0 || second <= 0) {
      throw refuse(text, "is no share; write two parts above zero such as 60:40");
    }
    return new Share(first / (first + second));
  }

  /** The name of a file or folder. */
  private static Path name(String text) {
    try {
      if (!text.isBlank() && text.chars().noneMatch(Character::isISOControl)) {
        return Path.of(text);
      }
    } catch (InvalidPathException e) {
      // refused below
    }
    throw refuse(text, "is no name of a file or folder");
  }

  /** How the face lies in the fire; what covers it may be named. */
  private static Exposure edge(String text) {
    return COVERS.contains(text.strip().toLowerCase(Locale.ROOT))
        ? Exposure.COVERED
        : choice(text, List.of(Exposure.OPEN, Exposure.COVERED));
  }

  private static Atmosphere atmosphere(String text) {
    return choice(text, List.of(Atmosphere.STILL_AIR, Atmosphere.MOIST_AIR, Atmosphere.FLAME));
  }

  /** How many forgings to work through. */
  private static int samples(String text) {
    try {
      int count = text.matches("[0-9]+") ? Integer.parseInt(text) : 1;
      if (count == 0 || count >= FEWEST_SAMPLES && count <= MOST_SAMPLES) {
        return count;
      }
    } catch (NumberFormatException e) {
      // refused below with the same sentence as a number out of range
    }
    throw refuse(
        text, "is neither 0 nor a whole number from " + FEWEST_SAMPLES + " to " + MOST_SAMPLES);
  }

  private static Scale scale(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT).replaceFirst("^(°|deg\\s*)", "")) {
      case "c", "celsius" -> Scale.CELSIUS;
      case "f", "fahrenheit" -> Scale.FAHRENHEIT;
      case "k", "kelvin" -> Scale.KELVIN;
      default -> throw refuse(text, "is none of C, F, K");
    };
  }

  private static TimeUnit timeUnit(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "ms" -> TimeUnit.MILLISECONDS;
      case "s", "sec", "seconds" -> TimeUnit.SECONDS;
      case "min", "minutes" -> TimeUnit.MINUTES;
      case "h", "hours" -> TimeUnit.HOURS;
      default -> throw refuse(text, "is none of s, min, h, ms");
    };
  }

  /** Which step or heat is meant. */
  private static Integer number(String text) {
    if (text.matches("[1-9][0-9]{0,3}")) {
      return Integer.valueOf(text);
    }
    throw refuse(text, "is no number of one; they are counted from 1");
  }

  private static TypeConversionException refuse(String text, String why) {
    return new TypeConversionException("'" + Fault.shown(text) + "' " + why);
  }

  private static <T> T quantity(String text, Function<String, T> parse) {
    try {
      return parse.apply(text);
    } catch (Refused e) {
      String hint = e.bare() ? " (in quotes, or without the space)" : "";
      throw new TypeConversionException(e.getMessage() + hint);
    }
  }

  private static <E extends Enum<E>> E choice(String text, List<E> choices) {
    List<String> words = words(choices);
    int at = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
    if (at >= 0) {
      return choices.get(at);
    }
    throw refuse(
        text,
        "is none of "
            + words.stream().collect(Collectors.joining(", "))
            + Nearest.to(text, words).map(n -> "; did you mean " + n + "?").orElse(""));
  }

  private static List<String> words(List<? extends Enum<?>> choices) {
    return choices.stream().map(c -> c.name().toLowerCase(Locale.ROOT).replace('_', '-')).toList();
  }
}
