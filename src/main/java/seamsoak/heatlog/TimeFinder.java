package seamsoak.heatlog;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds where a log's times come from.
 *
 * @param columns all of the log's
 */
record TimeFinder(Layout layout, List<Column> columns, LogAnswers answers) {
  /** So many rows of the sample follow each other without a break. */
  private static final int NEAR = 50;

  /** What was found, or what has to be asked. */
  record Found(Optional<TimeSource> source, Optional<LogQuestion> question, List<Integer> used) {
    static Found of(TimeSource source, List<Integer> used) {
      return new Found(Optional.of(source), Optional.empty(), used);
    }

    static Found asks(LogQuestion question, List<Integer> used) {
      return new Found(Optional.empty(), Optional.of(question), used);
    }
  }

  Found find() {
    Optional<Column> number =
        first(Column.Kind.NUMBER, c -> c.numbersRows() && c.scale().isEmpty() && !isTemperature(c));
    if (answers.intervalSeconds().isPresent()) {
      return rows(number, answers.intervalSeconds().get());
    }
    Optional<Column> moment = first(Column.Kind.MOMENT, c -> true);
    if (moment.isPresent()) {
      return Found.of(
          new TimeSource.Clock(moment.get().index(), Optional.empty(), 1),
          List.of(moment.get().index()));
    }
    Optional<Column> clock = first(Column.Kind.CLOCK, c -> true);
    if (clock.isPresent()) {
      return clock(clock.get());
    }
    return counter(number);
  }

  private Optional<Column> first(Column.Kind kind, Function<Column, Boolean> of) {
    return columns.stream().filter(c -> c.kind() == kind && of.apply(c)).findFirst();
  }

  private static boolean isTemperature(Column c) {
    return HeadWords.scale(c.name()).isPresent() && HeadWords.timeUnit(c.name()).isEmpty();
  }

  private Found clock(Column clock) {
    Optional<Integer> date = first(Column.Kind.DATE, c -> true).map(Column::index);
    List<Integer> used = date.map(d -> List.of(clock.index(), d)).orElse(List.of(clock.index()));
    List<ClockText> times =
        layout.sample().stream()
            .map(row -> ClockText.parse(row.get(clock.index())))
            .flatMap(Optional::stream)
            .toList();
    boolean two = times.stream().anyMatch(t -> t.parts() == 2);
    Optional<TimeUnit> said =
        answers.timeUnit().isPresent() ? answers.timeUnit() : HeadWords.firstPart(clock.name());
    boolean day = date.isPresent() || times.stream().anyMatch(ClockText::marked) || repeats(times);
    if (two && said.isEmpty() && !day) {
      return Found.asks(
          new LogQuestion.WhichTimeUnit(
              clock.name(), cell(clock, 0), cell(clock, layout.sample().size() - 1)),
          used);
    }
    boolean minutes = two && said.filter(u -> u == TimeUnit.MINUTES).isPresent();
    return Found.of(new TimeSource.Clock(clock.index(), date, minutes ? 1.0 / 60 : 1), used);
  }

  private String cell(Column column, int row) {
    return layout.sample().get(row).get(column.index()).strip();
  }

  /** A time that stands in several rows running counts minutes of a day. */
  private static boolean repeats(List<ClockText> times) {
    int near = Math.min(NEAR, times.size());
    int same = 0;
    for (int i = 1; i < near; i++) {
      same += times.get(i).seconds() == times.get(i - 1).seconds() ? 1 : 0;
    }
    return 2 * same > near;
  }

  private Found counter(Optional<Column> number) {
    List<Column> counts =
        columns.stream()
            .filter(c -> c.kind() == Column.Kind.NUMBER && c.isCount() && !isTemperature(c))
            .filter(c -> !HeadWords.isTimeLeft(c.name()))
            .sorted(Comparator.comparingInt(c -> HeadWords.isTime(c.name()) ? 0 : 1))
            .toList();
    for (Column c : counts) {
      Optional<TimeUnit> unit = unit(c);
      if (unit.isPresent()) {
        return counter(c, answers.timeUnit().orElse(unit.get()));
      }
    }
    Optional<Column> time =
        counts.stream()
            .filter(c -> HeadWords.isTime(c.name()) || !c.numbersRows() && c.index() == 0)
            .findFirst();
    if (time.isPresent()) {
      List<Integer> used = List.of(time.get().index());
      return answers
          .timeUnit()
          .map(u -> counter(time.get(), u))
          .orElseGet(
              () ->
                  Found.asks(
                      new LogQuestion.WhichTimeUnit(
                          time.get().name(),
                          cell(time.get(), 0),
                          cell(time.get(), layout.sample().size() - 1)),
                      used));
    }
    return layout
        .interval()
        .map(seconds -> rows(number, seconds))
        .orElseGet(
            () ->
                Found.asks(
                    new LogQuestion.WhichInterval(layout.sample().size()),
                    number.map(c -> List.of(c.index())).orElse(List.of())));
  }

  /** The unit that its head says or its size; a letter alone is one only where time is meant. */
  private static Optional<TimeUnit> unit(Column c) {
    Optional<TimeUnit> said =
        HeadWords.timeUnit(c.name())
            .filter(
                u ->
                    HeadWords.isTime(c.name())
                        || c.name().length() == 1
                        || !HeadWords.isBareLetter(c.name()));
    return said.isPresent() ? said : c.calendar();
  }

  private static Found counter(Column c, TimeUnit unit) {
    return Found.of(
        new TimeSource.Counter(c.index(), c.mark(), unit.seconds()), List.of(c.index()));
  }

  private static Found rows(Optional<Column> number, double seconds) {
    return Found.of(
        new TimeSource.Rows(number.map(Column::index), seconds),
        number.map(c -> List.of(c.index())).orElse(List.of()));
  }
}
