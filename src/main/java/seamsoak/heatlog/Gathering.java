package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.data.Fault;
import seamsoak.data.ForeignRows;
import seamsoak.data.Place;

/** Goes through all rows of a log once and keeps the time and the temperature of each reading. */
final class Gathering {
  private static final double MOST_EVENTS = 0.1;

  private final Layout layout;
  private final TimeSource source;
  private final int column;
  private final DecimalMark mark;
  private final Numbers times = new Numbers();
  private final Numbers readings = new Numbers();
  private final Numbers lines = new Numbers();

  /** For a clock: the date of each reading, as a place among the dates. */
  private final Numbers days = new Numbers();

  private final List<String> dates = new ArrayList<>();
  private long events;

  private Gathering(Layout layout, TimeSource source, int column, DecimalMark mark) {
    this.layout = layout;
    this.source = source;
    this.column = column;
    this.mark = mark;
  }

  /**
   * What was kept, in the order of the file.
   *
   * @param times seconds, of a clock those of its day; the row's number where rows are counted
   * @param readings as they stand there, NaN where the couple was open
   * @param lines of the file
   * @param days places among the dates
   * @param dates as written, each where it began
   * @param events rows passed over that hold no reading
   */
  record Kept(
      double[] times,
      double[] readings,
      double[] lines,
      double[] days,
      List<String> dates,
      long events) {}

  static Kept of(Layout layout, TimeSource source, int column, DecimalMark mark) {
    Gathering all = new Gathering(layout, source, column, mark);
    ForeignRows.each(layout.file(), layout.content(), layout.delimiter(), all::take);
    if (all.times.size() < 2) {
      throw new Fault(
          Place.of(layout.file()), "it holds fewer than two readings", "give the log of a heat");
    }
    if (all.events > MOST_EVENTS * (all.times.size() + all.events)) {
      throw new Fault(
          Place.of(layout.file()),
          all.events + " of its rows are not like the other " + all.times.size(),
          "give one table with the same columns in every row");
    }
    return new Kept(
        all.times.array(),
        all.readings.array(),
        all.lines.array(),
        all.days.array(),
        all.dates,
        all.events);
  }

  private void take(long line, String[] cells) {
    if (line < layout.firstLine()) {
      return;
    }
    // a row that is too wide may have been parted in the middle of a number
    for (int c = layout.width(); c < cells.length; c++) {
      if (!cells[c].isBlank()) {
        events++;
        return;
      }
    }
    if (column >= cells.length || !takesTime(cells)) {
      events++;
      return;
    }
    readings.add(NumberText.parse(cells[column], mark));
    lines.add(line);
  }

  private boolean takesTime(String[] cells) {
    if (source instanceof TimeSource.Clock clock) {
      return takesClock(clock, cells);
    }
    if (source instanceof TimeSource.Counter counter) {
      return takesNumber(cells, counter.column(), counter.mark(), counter.unitSeconds());
    }
    TimeSource.Rows rows = (TimeSource.Rows) source;
    if (rows.number().isPresent()) {
      return takesNumber(cells, rows.number().get(), DecimalMark.DOT, rows.intervalSeconds());
    }
    boolean reading =
        Column.isOpen(cells[column]) || !Double.isNaN(NumberText.parse(cells[column], mark));
    if (reading) {
      times.add(times.size() * rows.intervalSeconds());
    }
    return reading;
  }

  private boolean takesNumber(String[] cells, int at, DecimalMark mark, double unit) {
    double value = at < cells.length ? NumberText.parse(cells[at], mark) : Double.NaN;
    if (Double.isNaN(value)) {
      return false;
    }
    times.add(value * unit);
    return true;
  }

  private boolean takesClock(TimeSource.Clock clock, String[] cells) {
    Optional<ClockText> time = clockAt(cells, clock.time()).filter(ClockText::hasTime);
    if (time.isEmpty()) {
      return false;
    }
    String date = time.get().date();
    if (clock.date().isPresent()) {
      Optional<ClockText> day = clockAt(cells, clock.date().get()).filter(ClockText::hasDate);
      if (day.isEmpty()) {
        return false;
      }
      date = day.get().date();
    }
    if (dates.isEmpty() || !dates.get(dates.size() - 1).equals(date)) {
      dates.add(date);
    }
    times.add(time.get().seconds() * clock.factor() - time.get().offsetSeconds());
    days.add(dates.size() - 1);
    return true;
  }

  private Optional<ClockText> clockAt(String[] cells, int at) {
    String known = dates.isEmpty() ? "" : dates.get(dates.size() - 1);
    return at < cells.length ? ClockText.parse(cells[at], known) : Optional.empty();
  }
}
