package seamsoak.heatlog;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * Days from one date to a later one, whatever order day, month and year stand in: of all readings
 * that make the second the later one, the nearest. A heat lasts days, not months.
 */
final class DayCount {
  private static final Pattern PARTS = Pattern.compile("[-/., ]+");
  private static final int[][] ORDERS = {{0, 1, 2}, {2, 1, 0}, {2, 0, 1}};
  private static final int CENTURY = 2000;

  private DayCount() {}

  /** At least 1; 0 where the second is not the later one in any order. */
  static long between(String before, String after) {
    String[] a = PARTS.split(before);
    String[] b = PARTS.split(after);
    if (!isNumbers(a) || !isNumbers(b)) {
      return 1; // names of months: the dates differ, and heats do not last longer
    }
    return Arrays.stream(ORDERS)
        .mapToLong(o -> between(a, b, o))
        .filter(d -> d > 0)
        .min()
        .orElse(0);
  }

  private static boolean isNumbers(String[] parts) {
    return parts.length == 3
        && Arrays.stream(parts).allMatch(p -> p.chars().allMatch(Character::isDigit));
  }

  private static long between(String[] a, String[] b, int[] order) {
    try {
      return ChronoUnit.DAYS.between(date(a, order), date(b, order));
    } catch (DateTimeException e) {
      return 0;
    }
  }

  private static LocalDate date(String[] parts, int[] order) {
    int year = Integer.parseInt(parts[order[0]]);
    return LocalDate.of(
        year < 100 ? CENTURY + year : year,
        Integer.parseInt(parts[order[1]]),
        Integer.parseInt(parts[order[2]]));
  }
}
