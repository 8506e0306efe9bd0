package seamsoak.heatlog;

import java.util.Arrays;
import java.util.function.Predicate;
import seamsoak.data.Fault;
import seamsoak.data.Place;

/**
 * Readings in the order of time, with the seconds of each since the first.
 *
 * @param seconds rising
 * @param readings NaN where the couple was open
 */
record TimeAxis(double[] seconds, double[] readings) {
  private static final double DAY = 86_400;
  private static final double HALF_DAY = DAY / 2;
  private static final double HOUR = 3600;

  /** A clock that is set by another may go back that far. */
  private static final double SET_BACK = 10;

  /** So many steps without any time passing mean that times are written to the minute. */
  private static final double MANY = 0.3;

  static TimeAxis of(String file, Gathering.Kept kept) {
    boolean newestFirst = newestFirst(kept);
    double[] seconds = ordered(kept.times(), newestFirst);
    double[] readings = ordered(kept.readings(), newestFirst);
    double[] lines = ordered(kept.lines(), newestFirst);
    if (kept.days().length > 0) {
      clock(file, seconds, lines, ordered(kept.days(), newestFirst), kept, newestFirst);
    }
    double[] spread = isCoarse(seconds) ? spread(seconds) : seconds;
    return rising(file, spread, readings, lines);
  }

  private static double[] ordered(double[] values, boolean reversed) {
    double[] ordered = values.clone();
    for (int i = 0; reversed && i < values.length; i++) {
      ordered[i] = values[values.length - 1 - i];
    }
    return ordered;
  }

  /** Whether times fall from most rows to the next, midnights left aside. */
  private static boolean newestFirst(Gathering.Kept kept) {
    double[] t = kept.times();
    int rising = 0;
    int falling = 0;
    for (int i = 1; i < t.length; i++) {
      boolean sameDay = kept.days().length == 0 || kept.days()[i] == kept.days()[i - 1];
      rising += sameDay && t[i] > t[i - 1] ? 1 : 0;
      falling += sameDay && t[i] < t[i - 1] ? 1 : 0;
    }
    return falling > rising;
  }

  /** Turns times of the day into seconds that go on over midnight. */
  private static void clock(
      String file,
      double[] seconds,
      double[] lines,
      double[] days,
      Gathering.Kept kept,
      boolean newestFirst) {
    boolean dated = !kept.dates().get(0).isEmpty();
    boolean twelve =
        Arrays.stream(seconds).allMatch(s -> s >= HOUR && s < HALF_DAY + HOUR)
            && has(seconds, s -> s >= HALF_DAY);
    double base = 0;
    for (int i = 1; i < seconds.length; i++) {
      if (days[i] != days[i - 1]) {
        long passed =
            DayCount.between(kept.dates().get((int) days[i - 1]), kept.dates().get((int) days[i]));
        if (passed == 0) {
          throw backward(file, lines[i]);
        }
        base = DAY * (Math.floor(base / DAY) + passed);
      }
      double back = seconds[i - 1] - (seconds[i] + base);
      if (back > HALF_DAY && !dated) {
        base += DAY;
      } else if (twelve && back > SET_BACK && back <= HALF_DAY) {
        base += HALF_DAY;
      }
      seconds[i] += base;
    }
  }

  private static boolean has(double[] values, Predicate<Double> of) {
    return Arrays.stream(values).anyMatch(of::test);
  }

  private static boolean isCoarse(double[] seconds) {
    int same = 0;
    for (int i = 1; i < seconds.length; i++) {
      same += seconds[i] == seconds[i - 1] ? 1 : 0;
    }
    return same > MANY * seconds.length;
  }

  /** Spreads rows that share a time evenly: the first ones come at the end of theirs. */
  private static double[] spread(double[] seconds) {
    double unit = Double.POSITIVE_INFINITY;
    for (int i = 1; i < seconds.length; i++) {
      double step = seconds[i] - seconds[i - 1];
      unit = step > 0 ? Math.min(unit, step) : unit;
    }
    if (Double.isInfinite(unit)) {
      return seconds;
    }
    double[] spread = new double[seconds.length];
    int usual = usualCount(seconds);
    for (int from = 0; from < seconds.length; ) {
      int to = from;
      while (to < seconds.length && seconds[to] == seconds[from]) {
        to++;
      }
      int count = to - from;
      boolean whole = count >= usual;
      double step = unit / (whole ? count : usual);
      double first = from == 0 && !whole ? seconds[from] + unit - count * step : seconds[from];
      for (int i = from; i < to; i++) {
        spread[i] = first + (i - from) * step;
      }
      from = to;
    }
    return spread;
  }

  /** Rows of one time, as most times have them. */
  private static int usualCount(double[] seconds) {
    int[] counts = new int[seconds.length + 1];
    int run = 1;
    for (int i = 1; i <= seconds.length; i++) {
      if (i < seconds.length && seconds[i] == seconds[i - 1]) {
        run++;
      } else {
        counts[run] += run;
        run = 1;
      }
    }
    int best = 1;
    for (int i = 2; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return best;
  }

  /** From zero, without rows that repeat a moment; {@link Fault} where time runs backward. */
  private static TimeAxis rising(String file, double[] seconds, double[] readings, double[] lines) {
    double[] t = new double[seconds.length];
    double[] r = new double[seconds.length];
    int kept = 0;
    for (int i = 0; i < seconds.length; i++) {
      double at = seconds[i] - seconds[0];
      if (kept > 0 && at < t[kept - 1] - SET_BACK) {
        throw backward(file, lines[i]);
      }
      if (kept == 0 || at > t[kept - 1]) {
        t[kept] = at;
        r[kept++] = readings[i];
      } else if (Double.isNaN(r[kept - 1])) {
        r[kept - 1] = readings[i];
      }
    }
    if (kept < 2) {
      throw new Fault(Place.of(file), "no time passes in it", "give the log of a heat");
    }
    return new TimeAxis(Arrays.copyOf(t, kept), Arrays.copyOf(r, kept));
  }

  private static Fault backward(String file, double line) {
    return new Fault(
        new Place(file, (int) line, 0),
        "its time runs backward here",
        "give one run after the other, or what comes before or after this row");
  }
}
