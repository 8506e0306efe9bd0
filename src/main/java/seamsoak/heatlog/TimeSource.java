package seamsoak.heatlog;

import java.util.Optional;

/** Where a log's times come from. */
sealed interface TimeSource {
  /**
   * A clock that a day's end sets back.
   *
   * @param time column of the time of day, or of date and time
   * @param date column of the date, where it has one of its own
   * @param factor 1, or 1/60 where the two parts of a time are minutes and seconds
   */
  record Clock(int time, Optional<Integer> date, double factor) implements TimeSource {}

  /** Numbers that count from some beginning. */
  record Counter(int column, DecimalMark mark, double unitSeconds) implements TimeSource {}

  /**
   * Rows at equal distances.
   *
   * @param number column that numbers them, so that missing ones are seen
   */
  record Rows(Optional<Integer> number, double intervalSeconds) implements TimeSource {}
}
