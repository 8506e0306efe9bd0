package seamsoak.heatlog;

import java.util.Optional;

/**
 * A date, a time of day or both, as a cell has them.
 *
 * @param date the date as written, empty where there is none
 * @param seconds since midnight or since a start; negative where there is no time
 * @param parts how many numbers the time is written with: 2 or 3, 0 where there is none
 * @param marked whether it says which half of the day it means
 * @param offsetSeconds how far its zone is ahead, 0 where it does not say
 */
record ClockText(String date, double seconds, int parts, boolean marked, int offsetSeconds) {
  private static final int HALF_DAY = 12 * 3600;

  boolean hasDate() {
    return !date.isEmpty();
  }

  boolean hasTime() {
    return parts > 0;
  }

  /** Reads a cell; empty where it is neither. */
  static Optional<ClockText> parse(String cell) {
    return parse(cell, "");
  }

  /** The same; a date that was read before is not looked at again. */
  static Optional<ClockText> parse(String cell, String known) {
    String text = cell.strip();
    int colon = text.indexOf(':');
    if (colon < 0) {
      return isDate(text) ? Optional.of(new ClockText(text, -1, 0, false, 0)) : Optional.empty();
    }
    int from = colon;
    while (from > 0 && Character.isDigit(text.charAt(from - 1))) {
      from--;
    }
    String date = text.substring(0, from);
    if (date.endsWith("T") || date.endsWith("_") || date.endsWith(",")) {
      date = date.substring(0, date.length() - 1);
    }
    date = date.strip();
    return date.isEmpty() || date.equals(known) || isDate(date)
        ? time(date, text, from)
        : Optional.empty();
  }

  private static Optional<ClockText> time(String date, String text, int from) {
    double seconds = 0;
    int parts = 0;
    int at = from;
    double unit = 3600;
    while (parts < 3) {
      int start = at;
      int value = 0;
      while (at < text.length() && Character.isDigit(text.charAt(at)) && at - start < 4) {
        value = value * 10 + text.charAt(at++) - '0';
      }
      int digits = at - start;
      if (digits == 0 || parts > 0 && (digits != 2 || value > 59)) {
        return Optional.empty();
      }
      seconds += value * unit;
      unit /= 60;
      parts++;
      if (at == text.length() || text.charAt(at) != ':' || parts == 3) {
        break;
      }
      at++;
    }
    if (parts < 2) {
      return Optional.empty();
    }
    if (parts == 3 && at < text.length() && ".,".indexOf(text.charAt(at)) >= 0) {
      double share = 1;
      for (at++; at < text.length() && Character.isDigit(text.charAt(at)); at++) {
        share /= 10;
        seconds += share * (text.charAt(at) - '0');
      }
    }
    return ended(date, text.substring(at).strip(), seconds, parts);
  }

  /** With what may follow a time: the half of the day, the zone. */
  private static Optional<ClockText> ended(String date, String rest, double seconds, int parts) {
    if (rest.isEmpty() || rest.equals("Z")) {
      return Optional.of(new ClockText(date, seconds, parts, false, 0));
    }
    String half = rest.replace(".", "").replace(" ", "").replace("\u202F", "");
    if (half.equalsIgnoreCase("am") || half.equalsIgnoreCase("pm")) {
      double hour = seconds % HALF_DAY;
      return seconds >= HALF_DAY + 3600 || seconds < 3600
          ? Optional.empty()
          : Optional.of(
              new ClockText(
                  date, half.equalsIgnoreCase("pm") ? hour + HALF_DAY : hour, parts, true, 0));
    }
    if (rest.matches("[+-]\\d{2}:?\\d{2}")) {
      String digits = rest.substring(1).replace(":", "");
      int ahead =
          3600 * Integer.parseInt(digits.substring(0, 2))
              + 60 * Integer.parseInt(digits.substring(2));
      return Optional.of(
          new ClockText(date, seconds, parts, false, rest.charAt(0) == '-' ? -ahead : ahead));
    }
    return Optional.empty();
  }

  /** Three parts, of which numbers are a day, a month, a year and a word is the name of a month. */
  private static boolean isDate(String text) {
    if (text.length() < 6 || text.length() > 20) {
      return false;
    }
    int parts = 0;
    int at = 0;
    while (at < text.length()) {
      int start = at;
      boolean number = Character.isDigit(text.charAt(at));
      while (at < text.length() && Character.isLetterOrDigit(text.charAt(at))) {
        if (Character.isDigit(text.charAt(at)) != number) {
          return false;
        }
        at++;
      }
      if (at == start || at - start > (number ? 4 : 9) || number && at - start == 3) {
        return false;
      }
      parts++;
      while (at < text.length() && "-/. ,".indexOf(text.charAt(at)) >= 0) {
        at++;
      }
    }
    return parts == 3 && Character.isDigit(text.charAt(text.length() - 1));
  }
}
