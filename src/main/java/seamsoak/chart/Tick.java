package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A mark on an axis: where it stands, in the axis' own unit, and what is written at it. */
record Tick(double at, String label) {

  /** A unit as seen from the axis' own: shown = factor x own + offset. */
  record Unit(double factor, double offset) {
    static final Unit OWN = new Unit(1, 0);
    static final Unit FAHRENHEIT = new Unit(1.8, 32);
    static final Unit INCH = new Unit(1 / 25.4, 0);
    static final Unit THOU = new Unit(1000 / 25.4, 0);

    double shown(double own) {
      return factor * own + offset;
    }
  }

  /** Round numbers of the unit between low and high, about as many as asked for, never more. */
  static List<Tick> round(double low, double high, int most, Unit unit) {
    double from = unit.shown(low);
    double to = unit.shown(high);
    double step = step((to - from) / most);
    int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    List<Tick> ticks = new ArrayList<>();
    for (long k = (long) Math.ceil(from / step - 1e-9); k * step <= to + 1e-9 * step; k++) {
      String label = String.format(Locale.ROOT, "%." + decimals + "f", k * step);
      ticks.add(new Tick((k * step - unit.offset) / unit.factor, label));
    }
    return ticks;
  }

  /** The same marks numbered as distances to either side of zero. */
  static List<Tick> distances(List<Tick> ticks) {
    return ticks.stream().map(tick -> new Tick(tick.at(), tick.label().replace("-", ""))).toList();
  }

  /** The first of 1, 2, 5 times a power of ten that is not smaller. */
  static double step(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double mantissa : new double[] {1, 2, 5}) {
      if (mantissa * power >= least * (1 - 1e-9)) {
        return mantissa * power;
      }
    }
    return 10 * power;
  }

  /** Minutes and hours for a logarithmic axis. */
  static List<Tick> durations(double low, double high) {
    List<Tick> ticks = new ArrayList<>();
    for (double m : new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 240, 480, 1440}) {
      if (m >= low && m <= high) {
        ticks.add(new Tick(m, duration(m)));
      }
    }
    return ticks;
  }

  /** Minutes as people say them. */
  static String duration(double minutes) {
    if (minutes < 1) {
      return trim(minutes) + " min";
    }
    long whole = Math.round(minutes);
    if (whole < 60) {
      return (minutes < 10 ? trim(minutes) : Long.toString(whole)) + " min";
    }
    return whole / 60 + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
  }

  private static String trim(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
