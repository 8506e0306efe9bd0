package seamsoak.heatlog;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * One column of a log, told from a sample of its cells.
 *
 * @param index from 0
 * @param name as its head has it; its number where it has none
 * @param kind by nine of ten cells
 * @param mark before its decimals
 * @param doubtfulMark whether every number in it reads one way or the other
 * @param scale of temperature that stands in its cells
 * @param values the numbers of the sample in order
 */
record Column(
    int index,
    String name,
    Kind kind,
    DecimalMark mark,
    boolean doubtfulMark,
    Optional<Scale> scale,
    double[] values) {
  private static final double MOST = 0.9;
  private static final double LEAST_READING = 0.05;
  private static final double EPOCH_FROM = 1e9;
  private static final double EPOCH_TO = 4e9;
  private static final double SERIAL_FROM = 20_000;
  private static final double SERIAL_TO = 80_000;
  private static final double MOST_DAYS = 60;
  private static final Set<String> OPEN =
      Set.of(
          "ol",
          "open",
          "nan",
          "err",
          "error",
          "over",
          "under",
          "ovr",
          "inf",
          "-inf",
          "n/a",
          "na",
          "null",
          "none",
          "fault",
          "fail",
          "off",
          "o.l",
          "overload",
          "#n/a",
          "invalid",
          "bad");

  /** What its cells are. */
  enum Kind {
    NUMBER,
    /** A time of day, or a time since the start written as one. */
    CLOCK,
    DATE,
    /** Date and time. */
    MOMENT,
    OTHER
  }

  static Column of(Layout layout, int index) {
    List<String> cells = layout.sample().stream().map(row -> row.get(index)).toList();
    Map<NumberText.Evidence, Integer> evidence = new HashMap<>();
    int clocks = 0;
    int dates = 0;
    int moments = 0;
    int filled = 0;
    int numbers = 0;
    for (String cell : cells) {
      if (isOpen(cell)) {
        continue;
      }
      filled++;
      Optional<ClockText> clock = ClockText.parse(cell);
      if (clock.isPresent()) {
        clocks += !clock.get().hasDate() ? 1 : 0;
        dates += !clock.get().hasTime() ? 1 : 0;
        moments += clock.get().hasDate() && clock.get().hasTime() ? 1 : 0;
      } else if (isNumber(cell)) {
        numbers++;
        evidence.merge(NumberText.evidence(cell), 1, Integer::sum);
      }
    }
    double most = MOST * filled;
    Kind kind = Kind.OTHER;
    if (numbers >= most && numbers > LEAST_READING * cells.size()) {
      kind = Kind.NUMBER;
    } else if (filled > 0 && clocks >= most) {
      kind = Kind.CLOCK;
    } else if (filled > 0 && dates >= most) {
      kind = Kind.DATE;
    } else if (filled > 0 && moments >= most) {
      kind = Kind.MOMENT;
    }
    DecimalMark mark = mark(evidence);
    boolean doubtful = kind == Kind.NUMBER && isDoubtful(evidence);
    Optional<Scale> scale =
        cells.stream()
            .filter(c -> !isOpen(c))
            .map(c -> HeadWords.scaleOfCell(NumberText.unit(c)))
            .flatMap(Optional::stream)
            .findFirst();
    return new Column(
        index,
        layout.title(index),
        kind,
        mark,
        doubtful,
        scale,
        cells.stream()
            .mapToDouble(c -> NumberText.parse(c, mark))
            .filter(v -> !Double.isNaN(v))
            .toArray());
  }

  private static boolean isNumber(String cell) {
    return !Double.isNaN(NumberText.parse(cell, DecimalMark.DOT))
        || !Double.isNaN(NumberText.parse(cell, DecimalMark.COMMA));
  }

  /** Whether a cell says that there is no reading. */
  static boolean isOpen(String cell) {
    String text = cell.strip().toLowerCase(Locale.ROOT);
    return OPEN.contains(text) || text.chars().noneMatch(Character::isLetterOrDigit);
  }

  private static DecimalMark mark(Map<NumberText.Evidence, Integer> evidence) {
    int dot = evidence.getOrDefault(NumberText.Evidence.DOT, 0);
    int comma = evidence.getOrDefault(NumberText.Evidence.COMMA, 0);
    if (dot != comma) {
      return dot > comma ? DecimalMark.DOT : DecimalMark.COMMA;
    }
    // beside whole numbers below a thousand a mark parts thousands, beside none of them decimals
    boolean whole = evidence.containsKey(NumberText.Evidence.WHOLE);
    boolean dots = evidence.containsKey(NumberText.Evidence.DOT_OR_THOUSANDS);
    boolean commas = evidence.containsKey(NumberText.Evidence.COMMA_OR_THOUSANDS);
    return dots && whole || commas && !whole && !dots ? DecimalMark.COMMA : DecimalMark.DOT;
  }

  /** Three digits behind every mark and nothing else to go by. */
  private static boolean isDoubtful(Map<NumberText.Evidence, Integer> evidence) {
    boolean known =
        evidence.containsKey(NumberText.Evidence.DOT)
            || evidence.containsKey(NumberText.Evidence.COMMA);
    boolean doubt =
        evidence.containsKey(NumberText.Evidence.DOT_OR_THOUSANDS)
            || evidence.containsKey(NumberText.Evidence.COMMA_OR_THOUSANDS);
    return doubt && !known && !evidence.containsKey(NumberText.Evidence.WHOLE);
  }

  double highest() {
    double highest = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      highest = Math.max(highest, v);
    }
    return highest;
  }

  double lowest() {
    double lowest = Double.POSITIVE_INFINITY;
    for (double v : values) {
      lowest = Math.min(lowest, v);
    }
    return lowest;
  }

  /** Whether it only rises, or only falls, apart from a few rows. */
  boolean isCount() {
    int up = steps(d -> d > 0);
    int down = steps(d -> d < 0);
    int all = values.length - 1;
    return all > 0 && Math.max(up, down) > 0 && Math.min(up, down) <= (1 - MOST) * all / 10;
  }

  /** Whether it numbers the rows: whole numbers, by one from each to the next. */
  boolean numbersRows() {
    for (double v : values) {
      if (v != Math.rint(v)) {
        return false;
      }
    }
    // later rows of the sample lie further apart
    int near = Math.min(values.length, 50) - 1;
    int ones = 0;
    for (int i = 0; i < near; i++) {
      ones += Math.abs(values[i + 1] - values[i]) == 1 ? 1 : 0;
    }
    return near > 0 && isCount() && ones >= MOST * near;
  }

  /** The unit of a number so large that it can only count from a calendar's beginning. */
  Optional<TimeUnit> calendar() {
    double low = lowest();
    double high = highest();
    if (!isCount()) {
      return Optional.empty();
    }
    if (low > EPOCH_FROM && high < EPOCH_TO) {
      return Optional.of(TimeUnit.SECONDS);
    }
    if (low > 1000 * EPOCH_FROM && high < 1000 * EPOCH_TO) {
      return Optional.of(TimeUnit.MILLISECONDS);
    }
    boolean days = low > SERIAL_FROM && high < SERIAL_TO && high - low < MOST_DAYS;
    return days && Arrays.stream(values).anyMatch(v -> v != Math.rint(v))
        ? Optional.of(TimeUnit.DAYS)
        : Optional.empty();
  }

  private int steps(Predicate<Double> of) {
    int count = 0;
    for (int i = 1; i < values.length; i++) {
      count += of.test(values[i] - values[i - 1]) ? 1 : 0;
    }
    return count;
  }
}
