package seamsoak.chart.figure;

import seamsoak.unit.UnitSystem;

/**
 * A unit as seen from the one that a figure is kept in: shown = factor x own + offset.
 *
 * @param name set at its axis
 */
public record Unit(String name, double factor, double offset) {
  public static final Unit PLAIN = new Unit("", 1, 0);
  public static final Unit CELSIUS = new Unit("°C", 1, 0);
  public static final Unit FAHRENHEIT = new Unit("°F", 1.8, 32);
  public static final Unit MILLIMETRE = new Unit("mm", 1, 0);
  public static final Unit INCH = new Unit("inches", 1 / 25.4, 0);
  public static final Unit THOU = new Unit("thousandths of an inch", 1000 / 25.4, 0);

  public double shown(double own) {
    return factor * own + offset;
  }

  /** Temperatures to the nearest 5 degrees, as the shop can hold. */
  public static String temperature(UnitSystem units, double low, double high) {
    String fahrenheit = range(FAHRENHEIT.shown(low), FAHRENHEIT.shown(high)) + " F";
    String metric = range(low, high) + " C";
    return both(units, fahrenheit, metric);
  }

  /** The reader's units, the metric ones in brackets where both are wanted. */
  public static String both(UnitSystem units, String us, String metric) {
    return switch (units) {
      case US -> us;
      case METRIC -> metric;
      case BOTH -> us + " (" + metric + ")";
    };
  }

  private static String range(double low, double high) {
    long from = 5 * Math.round(low / 5);
    long to = 5 * Math.round(high / 5);
    return from == to ? Long.toString(from) : from + "–" + to;
  }
}
