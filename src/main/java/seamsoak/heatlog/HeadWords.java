package seamsoak.heatlog;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the name of a column says: a unit in brackets or at its end, and words for what it holds, in
 * the languages of the machines that one meets.
 */
final class HeadWords {
  private static final Pattern TYPE =
      Pattern.compile(
          "[\\[(]?\\b(type|typ|tc|thermocouple)[ -]*[KNSRJTEB]\\b[\\])]?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern BRACKETS =
      Pattern.compile("[\\[({]\\s*([^\\[\\](){}]*?)\\s*[\\])}]");
  private static final Pattern LAST = Pattern.compile("(?:^|[\\s_./,:-])([^\\s_./,:-]+)\\s*$");
  private static final Pattern SET =
      words(
          "sp\\d*|sv\\d*|wsp|set|set[ _-]?p(oin)?t\\d*|set[ _-]?temp\\w*|set[ _-]?value|soll\\w*"
              + "|target|consigne|program(med)?|ramp[ _-]?sp|preset|desired|vorgabe");
  private static final Pattern TIME =
      words(
          "time\\w*|elapsed|^t$|^ts$|zeit\\w*|uhrzeit|temps|heure|hora|tiempo|tempo|duration|dauer"
              + "|seconds?|minutes?|hours?|timestamp|clock");
  private static final Pattern LEFT = words("left|remain\\w*|rest\\w*|to[ _-]go");
  private static final Pattern NO_READING =
      words(
          "out(put)?\\d*|op\\d*|power|duty|humidity|rh|feuchte|leistung|alarm|error|status|event"
              + "|junction|cj|ambient|room|battery|volt\\w*|amp\\w*|watt\\w*|flow|door");
  private static final Set<String> OTHER_UNITS =
      Set.of(
          "%",
          "%rh", "v", "mv", "a", "ma", "w", "kw", "rpm", "bar", "mbar", "pa", "kpa", "psi", "ppm",
          "0/1", "on/off", "l/min", "m/s", "c/min", "c/h", "°c/min", "°c/h", "k/min", "k/h", "f/h",
          "°f/h");

  private HeadWords() {}

  private static Pattern words(String any) {
    return Pattern.compile("(?<![a-z])(" + any + ")(?![a-z])", Pattern.CASE_INSENSITIVE);
  }

  static boolean isSetPoint(String name) {
    return SET.matcher(name).find();
  }

  static boolean isTime(String name) {
    return TIME.matcher(name).find();
  }

  /** Whether it counts down to an end. */
  static boolean isTimeLeft(String name) {
    return LEFT.matcher(name).find();
  }

  /** Whether it is of anything else than what the work had. */
  static boolean isNoReading(String name) {
    return scale(name).isEmpty() && NO_READING.matcher(name).find() || otherUnit(name);
  }

  private static boolean otherUnit(String name) {
    return unitText(name).map(OTHER_UNITS::contains).orElse(false);
  }

  /** Whether a cell of a head is a unit and no name. */
  static boolean isUnit(String cell) {
    String text = bare(cell);
    return scaleOf(text).isPresent() || timeUnitOf(text).isPresent() || OTHER_UNITS.contains(text);
  }

  /** The scale that a name ends in; a bare K may be the couple's type. */
  static Optional<Scale> scale(String name) {
    return unitText(name).flatMap(HeadWords::scaleOf);
  }

  /** The scale that stands behind the numbers of a column. */
  static Optional<Scale> scaleOfCell(String unit) {
    return scaleOf(bare(unit));
  }

  static Optional<TimeUnit> timeUnit(String name) {
    return unitText(name).flatMap(HeadWords::timeUnitOf);
  }

  /** Whether the unit of a name is a letter alone, which may as well name a zone. */
  static boolean isBareLetter(String name) {
    String rest = TYPE.matcher(name).replaceAll(" ");
    return !BRACKETS.matcher(rest).find()
        && unitText(name).filter(u -> u.length() == 1).isPresent();
  }

  /** A name without what tells a zone from another. */
  static String stem(String name) {
    Matcher last = LAST.matcher(name);
    return last.find() ? name.substring(0, last.start()).strip() : name;
  }

  /** Whether a K in it may be the couple's type as well as the scale. */
  static boolean isDoubtfulKelvin(String name) {
    return scale(name).filter(s -> s == Scale.KELVIN).isPresent()
        && !TYPE.matcher(name).find()
        && !name.toLowerCase(Locale.ROOT).contains("kelvin");
  }

  /** A time of two parts that says which they are. */
  static Optional<TimeUnit> firstPart(String name) {
    String text = name.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    if (text.matches(".*(h+:m+|hours?:min\\w*|hr:min).*")) {
      return Optional.of(TimeUnit.HOURS);
    }
    return text.matches(".*(m+:s+|min\\w*:sec\\w*).*")
        ? Optional.of(TimeUnit.MINUTES)
        : Optional.empty();
  }

  private static Optional<String> unitText(String name) {
    String rest = TYPE.matcher(name).replaceAll(" ");
    Matcher in = BRACKETS.matcher(rest);
    String found = null;
    while (in.find()) {
      found = in.group(1);
    }
    if (found == null) {
      Matcher last = LAST.matcher(rest);
      found = last.find() ? last.group(1) : null;
      if (rest.strip().matches("(?i).*\\bdeg(rees?)?\\.?[ _]?[CF]")) {
        found = rest.strip().substring(rest.strip().length() - 1);
      }
    }
    return Optional.ofNullable(found).map(HeadWords::bare).filter(u -> !u.isEmpty());
  }

  private static String bare(String unit) {
    return unit.strip()
        .toLowerCase(Locale.ROOT)
        .replace('º', '°')
        .replaceFirst("^[\\[({]\\s*", "")
        .replaceFirst("\\s*[\\])}]$", "")
        .replaceAll("\\s", "");
  }

  private static Optional<Scale> scaleOf(String unit) {
    return switch (unit) {
      case "°c", "c", "degc", "deg.c", "celsius", "centigrade", "℃", "gradc", "grdc" ->
          Optional.of(Scale.CELSIUS);
      case "°f", "f", "degf", "deg.f", "fahrenheit", "℉" -> Optional.of(Scale.FAHRENHEIT);
      case "k", "°k", "kelvin" -> Optional.of(Scale.KELVIN);
      default -> Optional.empty();
    };
  }

  private static Optional<TimeUnit> timeUnitOf(String unit) {
    return switch (unit) {
      case "ms", "msec", "millisecond", "milliseconds" -> Optional.of(TimeUnit.MILLISECONDS);
      case "s", "sec", "secs", "second", "seconds", "sek" -> Optional.of(TimeUnit.SECONDS);
      case "min", "mins", "minute", "minutes", "m" -> Optional.of(TimeUnit.MINUTES);
      case "h", "hr", "hrs", "hour", "hours", "std" -> Optional.of(TimeUnit.HOURS);
      case "d", "day", "days" -> Optional.of(TimeUnit.DAYS);
      default -> Optional.empty();
    };
  }
}
