package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What a thermocouple read, and what of it was left out.
 *
 * @param seconds since the log's first row, rising
 * @param celsius as many
 * @param leftOut readings that are none
 * @param usualSeconds from one row to the next, mostly
 * @param lastSeconds of the log, readings or not
 */
public record Readings(
    double[] seconds,
    double[] celsius,
    List<LeftOut> leftOut,
    double usualSeconds,
    double lastSeconds) {
  /** Between readings that far apart nobody knows what happened. */
  public static final double GAP_SECONDS = 60;

  private static final double AT_THE_END_KELVIN = 0.5;

  /** No shop is colder. */
  private static final double COLDEST_CELSIUS = -60;

  /** A logger that always writes more rarely has no gaps for that alone. */
  private static final double USUAL_STEPS = 2.5;

  /** Why a reading counts for nothing. */
  public enum Why {
    /** Far from all around it. */
    SPIKE,
    /** No number stands there. */
    OPEN,
    /** Hotter than that couple can read, or than any fire. */
    BEYOND_RANGE
  }

  /**
   * A reading left out.
   *
   * @param celsius what stood there, NaN for none
   */
  public record LeftOut(double seconds, double celsius, Why why) {}

  /** All that was read, with what is no reading left out. */
  static Readings of(TimeAxis axis, Scale scale) {
    double[] celsius = Arrays.stream(axis.readings()).map(scale::celsius).toArray();
    List<LeftOut> out = new ArrayList<>();
    double[] steps = new double[celsius.length - 1];
    for (int i = 1; i < celsius.length; i++) {
      steps[i - 1] = axis.seconds()[i] - axis.seconds()[i - 1];
    }
    Arrays.sort(steps);
    Readings all =
        new Readings(
            axis.seconds(),
            celsius,
            out,
            steps[steps.length / 2],
            axis.seconds()[celsius.length - 1]);
    Readings closed = all.without(i -> Double.isNaN(celsius[i]), Why.OPEN);
    boolean[] spikes = Spikes.in(closed.seconds, closed.celsius);
    return closed.without(i -> spikes[i], Why.SPIKE);
  }

  /** Those within a couple's range, at whose ends many loggers stay while it is open. */
  Readings below(double endCelsius) {
    return without(
        i -> celsius[i] > endCelsius - AT_THE_END_KELVIN || celsius[i] < COLDEST_CELSIUS,
        Why.BEYOND_RANGE);
  }

  private Readings without(IntPredicate leftOut, Why why) {
    List<LeftOut> out = new ArrayList<>(this.leftOut);
    double[] t = new double[seconds.length];
    double[] c = new double[seconds.length];
    int kept = 0;
    for (int i = 0; i < seconds.length; i++) {
      if (leftOut.test(i)) {
        out.add(new LeftOut(seconds[i], celsius[i], why));
      } else {
        t[kept] = seconds[i];
        c[kept++] = celsius[i];
      }
    }
    return new Readings(
        Arrays.copyOf(t, kept), Arrays.copyOf(c, kept), out, usualSeconds, lastSeconds);
  }

  /** What lies between two moments, each end read off straight between readings. */
  Readings within(double fromSeconds, double toSeconds) {
    Numbers t = new Numbers();
    Numbers c = new Numbers();
    for (int i = 0; i < seconds.length; i++) {
      if (i > 0 && seconds[i - 1] < fromSeconds && seconds[i] > fromSeconds) {
        t.add(fromSeconds);
        c.add(between(i, fromSeconds));
      }
      if (i > 0 && seconds[i - 1] < toSeconds && seconds[i] > toSeconds) {
        t.add(toSeconds);
        c.add(between(i, toSeconds));
      }
      if (seconds[i] >= fromSeconds && seconds[i] <= toSeconds) {
        t.add(seconds[i]);
        c.add(celsius[i]);
      }
    }
    return new Readings(t.array(), c.array(), leftOut, usualSeconds, lastSeconds);
  }

  private double between(int i, double at) {
    double share = (at - seconds[i - 1]) / (seconds[i] - seconds[i - 1]);
    return celsius[i - 1] + share * (celsius[i] - celsius[i - 1]);
  }

  /** Whether nobody knows what happened from one reading to the next. */
  boolean isGap(int next) {
    double apart = seconds[next] - seconds[next - 1];
    return apart > Math.max(GAP_SECONDS, USUAL_STEPS * usualSeconds);
  }

  /** The first reading above a temperature after which the next, soon, is so much lower. */
  OptionalInt fall(double kelvin, double fromCelsius) {
    return IntStream.range(0, seconds.length - 1)
        .filter(i -> celsius[i] > fromCelsius && celsius[i] - celsius[i + 1] > kelvin)
        .filter(i -> seconds[i + 1] - seconds[i] < GAP_SECONDS)
        .findFirst();
  }

  /** How many readings were left out for a reason. */
  public long count(Why why) {
    return leftOut.stream().filter(l -> l.why() == why).count();
  }

  double highest() {
    return Arrays.stream(celsius).max().orElse(Double.NEGATIVE_INFINITY);
  }
}
