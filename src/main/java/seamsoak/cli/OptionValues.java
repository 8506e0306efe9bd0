package seamsoak.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import seamsoak.billet.Exposure;
import seamsoak.data.Fault;
import seamsoak.data.Nearest;
import seamsoak.unit.Length;
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

  private OptionValues() {}

  /** A temperature of a fire. */
  static final class Temperature implements ITypeConverter<seamsoak.unit.Temperature> {
    @Override
    public seamsoak.unit.Temperature convert(String text) {
      seamsoak.unit.Temperature at = quantity(text, seamsoak.unit.Temperature::parse);
      if (at.celsius() < COLDEST_CELSIUS || at.celsius() > HOTTEST_CELSIUS + 1e-9) {
        throw refuse(text, "is no heat; one is between 100 C (212 F) and 1600 C (2912 F)");
      }
      return at;
    }
  }

  /** A time above zero. */
  static final class Time implements ITypeConverter<TimeSpan> {
    @Override
    public TimeSpan convert(String text) {
      TimeSpan time = quantity(text, TimeSpan::parse);
      if (time.seconds() <= 0) {
        throw refuse(text, "is no time in a fire");
      }
      return time;
    }
  }

  /**
   * Thicknesses of two layers.
   *
   * @param first of the first steel
   * @param second of the second
   */
  record Pair(Length first, Length second) {}

  /** One thickness or two, above zero. */
  static final class Layers implements ITypeConverter<OptionValues.Pair> {
    @Override
    public Pair convert(String text) {
      List<Length> layers = new ArrayList<>();
      for (String one : text.split(",", -1)) {
        Length length = quantity(one, Length::parse);
        if (length.metres() < THINNEST_METRES) {
          throw refuse(one, "is thinner than 0.01 mm");
        }
        layers.add(length);
      }
      if (layers.size() > 2) {
        throw refuse(text, "names " + layers.size() + " layers; give one for both or A,B");
      }
      return new Pair(layers.get(0), layers.get(layers.size() - 1));
    }
  }

  /** One thickness above zero. */
  static final class Thickness implements ITypeConverter<Length> {
    @Override
    public Length convert(String text) {
      Length length = quantity(text, Length::parse);
      if (length.metres() < THINNEST_METRES) {
        throw refuse(text, "is thinner than 0.01 mm");
      }
      return length;
    }
  }

  /** Two parts such as 60:40, as the share of the first, 0 to 1. */
  static final class Share implements ITypeConverter<Double> {
    private static final int LONGEST = 60;
    private static final Pattern PARTS =
        Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*%?\\s*[:/]\\s*(\\d+(?:\\.\\d+)?)\\s*%?\\s*");

    @Override
    public Double convert(String text) {
      Matcher m = PARTS.matcher(text.length() > LONGEST ? "" : text);
      double first = m.matches() ? Double.parseDouble(m.group(1)) : 0;
      double second = m.matches() ? Double.parseDouble(m.group(2)) : 0;
      if (first <= 0 || second <= 0) {
        throw refuse(text, "is no share; write two parts above zero such as 60:40");
      }
      return first / (first + second);
    }
  }

  /** The name of a file or folder. */
  static final class Name implements ITypeConverter<Path> {
    @Override
    public Path convert(String text) {
      try {
        if (!text.isBlank() && text.chars().noneMatch(Character::isISOControl)) {
          return Path.of(text);
        }
      } catch (InvalidPathException e) {
        // refused below
      }
      throw refuse(text, "is no name of a file or folder");
    }
  }

  /** How the face lies in the fire; what covers it may be named. */
  static final class Edge implements ITypeConverter<Exposure> {
    private static final List<String> COVERS = List.of("flux", "oil", "paint");

    @Override
    public Exposure convert(String text) {
      return COVERS.contains(text.strip().toLowerCase(Locale.ROOT))
          ? Exposure.COVERED
          : choice(text, List.of(Exposure.OPEN, Exposure.COVERED));
    }
  }

  /** The words for how a face lies, for a shell to complete. */
  static final class EdgeNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("open", "covered").iterator();
    }
  }

  /** The units to show. */
  static final class Units implements ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String text) {
      return choice(text, Arrays.asList(UnitSystem.values()));
    }
  }

  /** The words for the units, for a shell to complete. */
  static final class UnitNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(UnitSystem.values())
          .map(u -> u.name().toLowerCase(Locale.ROOT))
          .iterator();
    }
  }

  /** How many histories to compute. */
  static final class Samples implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
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
  }

  private static TypeConversionException refuse(String text, String why) {
    return new TypeConversionException("'" + Fault.shown(text) + "' " + why);
  }

  private static <T> T quantity(String text, Function<String, T> parse) {
    try {
      return parse.apply(text);
    } catch (IllegalArgumentException e) {
      String hint = e.getMessage().contains("no unit") ? " (in quotes, or without the space)" : "";
      throw new TypeConversionException(e.getMessage() + hint);
    }
  }

  private static <E extends Enum<E>> E choice(String text, List<E> choices) {
    List<String> words = choices.stream().map(c -> c.name().toLowerCase(Locale.ROOT)).toList();
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
}
