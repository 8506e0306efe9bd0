package seamsoak.unit;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long something lasts.
 *
 * @param seconds may be negative, as a difference can be; what people write may not
 */
public record TimeSpan(double seconds) {
  private static final QuantityText ACCEPTED =
      new QuantityText("a time such as 90 s, 4 min, 1.5 h or 1 h 20 min");
  private static final Pattern PART =
      Pattern.compile("([0-9]+\\.?[0-9]*|\\.[0-9]+)\\s*([^0-9.\\s]*)(?:\\.(?![0-9]))?\\s*");
  private static final double HOUR = 3600;
  private static final double MINUTE = 60;
  private static final double LONGEST_SECONDS = 10_000 * HOUR;

  public TimeSpan {
    QuantityText.finite(seconds);
  }

  public static TimeSpan ofMinutes(double minutes) {
    return new TimeSpan(minutes * MINUTE);
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static TimeSpan parse(String text) {
    return of(text, 0);
  }

  /** The same where a bare number is one of minutes, whatever the system. */
  public static TimeSpan parse(String text, UnitSystem bare) {
    return of(text, unit(bare.bare("min", "min")));
  }

  /**
   * Reads parts with their units.
   *
   * @param alone the unit of a number that stands all alone, s; 0 where it needs one
   */
  private static TimeSpan of(String text, double alone) {
    String tidy = ACCEPTED.tidy(text).toLowerCase(Locale.ROOT);
    if (tidy.indexOf(':') >= 0) {
      throw ACCEPTED.refuse(text, "could be hours or minutes (say 1 h 20 min or 1 min 20 s)");
    }
    if (tidy.startsWith("-")) {
      throw ACCEPTED.refuse(text, "is negative");
    }
    Matcher part = PART.matcher(tidy);
    double total = 0;
    double larger = Double.POSITIVE_INFINITY;
    int at = 0;
    for (; part.region(at, tidy.length()).lookingAt(); at = part.end()) {
      double value = Double.parseDouble(part.group(1));
      String word = part.group(2);
      boolean clockStyle = word.isEmpty() && larger == HOUR && part.group(1).length() == 2;
      boolean bare = word.isEmpty() && at == 0 && part.end() == tidy.length();
      double unit = clockStyle ? MINUTE : bare ? alone : unit(word);
      if (unit == 0) {
        throw ACCEPTED.refuseUnit(text, word);
      }
      boolean follows = larger < Double.POSITIVE_INFINITY;
      if (follows && (unit >= larger || value >= 60 || total % larger != 0)) {
        throw ACCEPTED.refuse(text, "is not hours, then minutes, then seconds, each below 60");
      }
      total += value * unit;
      larger = unit;
    }
    if (at == 0) {
      throw ACCEPTED.refuse(text, "does not begin with a number");
    }
    if (at < tidy.length()) {
      throw ACCEPTED.refuseUnit(text, tidy.substring(at));
    }
    if (total > LONGEST_SECONDS) {
      throw ACCEPTED.refuse(text, "is longer than any heat");
    }
    return new TimeSpan(total);
  }

  /** Seconds in a written unit, 0 when it is none of time. */
  private static double unit(String word) {
    return switch (word) {
      case "h", "hr", "hrs", "hour", "hours" -> HOUR;
      case "m", "min", "mins", "minute", "minutes" -> MINUTE;
      case "s", "sec", "secs", "second", "seconds" -> 1;
      default -> 0;
    };
  }

  public double minutes() {
    return seconds / MINUTE;
  }

  public double hours() {
    return seconds / HOUR;
  }

  /**
   * As a shop keeps time, the same in every system: half minutes below 10 min, whole minutes below
   * 2 h, hours and minutes after that, whole hours from a day on.
   */
  public String format(UnitSystem units) {
    return seconds < 0 ? "-" + shown(-seconds) : shown(seconds);
  }

  private static String shown(double seconds) {
    if (seconds >= 0.5 && seconds < 59.5) {
      return Math.round(seconds) + " s";
    }
    double minutes = seconds / MINUTE;
    if (minutes < 10) {
      return Decimals.upTo(Math.round(minutes * 2) / 2.0, 1) + " min";
    }
    long step = seconds >= 24 * HOUR ? 60 : 1;
    long whole = step * Math.round(minutes / step);
    if (whole < 120) {
      return whole + " min";
    }
    return whole / 60 + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
  }
}
