package seamsoak.chart;

import java.util.List;
import seamsoak.unit.UnitSystem;

/** Temperatures in the reader's units: axis marks and labels. Axes themselves run in Celsius. */
record Temperatures(UnitSystem units) {

  List<Tick> first(double low, double high, int most) {
    return units == UnitSystem.METRIC
        ? Tick.round(low, high, most, Tick.Unit.OWN)
        : Tick.round(low, high, most, Tick.Unit.FAHRENHEIT);
  }

  List<Tick> second(double low, double high, int most) {
    return units == UnitSystem.BOTH ? Tick.round(low, high, most, Tick.Unit.OWN) : List.of();
  }

  String firstName() {
    return units == UnitSystem.METRIC ? "°C" : "°F";
  }

  String secondName() {
    return units == UnitSystem.BOTH ? "°C" : "";
  }

  /** To the nearest 5 degrees, as the shop can hold. */
  String text(double celsius) {
    return text(celsius, celsius);
  }

  String text(double low, double high) {
    String fahrenheit = range(Tick.Unit.FAHRENHEIT.shown(low), Tick.Unit.FAHRENHEIT.shown(high));
    String metric = range(low, high) + " C";
    return switch (units) {
      case US -> fahrenheit + " F";
      case METRIC -> metric;
      case BOTH -> fahrenheit + " F (" + metric + ")";
    };
  }

  private static String range(double low, double high) {
    long from = 5 * Math.round(low / 5);
    long to = 5 * Math.round(high / 5);
    return from == to ? Long.toString(from) : from + "–" + to;
  }
}
