package seamsoak.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickUnits;
import org.jfree.chart.axis.ValueAxis;
import seamsoak.chart.figure.Unit;
import seamsoak.unit.UnitSystem;

/**
 * The two axes of one direction.
 *
 * @param first at the left or bottom, numbered in the reader's first unit; the grid follows it
 * @param own what the curves run on, seen at the right or top where its unit is wanted too
 * @param names of the units that are seen
 */
record Axes(ValueAxis first, ValueAxis own, String firstName, String ownName) {

  /** In the unit of the figure alone. */
  static Axes plain(double low, double high) {
    return new Axes(numbers(low, high, "-"), hidden(numbers(low, high, "-")), "", "");
  }

  static Axes unseen(double low, double high) {
    return new Axes(hidden(numbers(low, high, "-")), hidden(numbers(low, high, "-")), "", "");
  }

  static Axes durations(double least, double most, boolean shorter) {
    ValueAxis own = hidden(new DurationAxis(shorter));
    ValueAxis first = new DurationAxis(shorter);
    own.setRange(least, most);
    first.setRange(least, most);
    return new Axes(first, own, "", "");
  }

  static Axes of(double low, double high, UnitSystem units, Unit us, Unit metric) {
    return of(low, high, units, us, metric, "-");
  }

  /** To either side of zero, numbered without a sign. */
  static Axes distances(double low, double high, UnitSystem units) {
    return of(low, high, units, Unit.INCH, Unit.MILLIMETRE, "");
  }

  private static Axes of(
      double low, double high, UnitSystem units, Unit us, Unit metric, String minus) {
    Unit unit = units == UnitSystem.METRIC ? metric : us;
    ValueAxis own = numbers(low, high, minus);
    own.setVisible(units == UnitSystem.BOTH);
    ValueAxis first = numbers(unit.shown(low), unit.shown(high), minus);
    return new Axes(first, own, unit.name(), own.isVisible() ? metric.name() : "");
  }

  /** Names both, each after its unit. */
  void name(String before, String after) {
    first.setLabel(before + firstName + after);
    own.setLabel(before + ownName + after);
  }

  private static ValueAxis hidden(ValueAxis axis) {
    axis.setVisible(false);
    return axis;
  }

  private static ValueAxis numbers(double low, double high, String minus) {
    NumberAxis axis = new NumberAxis();
    axis.setRange(low, high);
    axis.setStandardTickUnits(round(minus));
    return axis;
  }

  /** 1, 2 or 5 times a power of ten, each with as many decimals as it takes. */
  private static TickUnits round(String minus) {
    TickUnits units = new TickUnits();
    for (int power = -4; power <= 5; power++) {
      DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
      format.setNegativePrefix(minus);
      format.setMinimumFractionDigits(Math.max(0, -power));
      format.setMaximumFractionDigits(Math.max(0, -power));
      for (int times : new int[] {1, 2, 5}) {
        units.add(new NumberTickUnit(times * Math.pow(10, power), format));
      }
    }
    return units;
  }
}
