package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;

/**
 * A table put together column by column: a head stands beside what fills its cells, and what is
 * told in two units is asked for once.
 *
 * @param <R> what a row is about
 */
final class Columns<R> {
  private static final String UNKNOWN = "-";
  private final List<R> rows;
  private final UnitSystem units;
  private final List<Table.Column> columns = new ArrayList<>();

  private Columns(List<R> rows, UnitSystem units) {
    this.rows = rows;
    this.units = units;
  }

  static <R> Columns<R> of(List<R> rows, UnitSystem units) {
    return new Columns<>(rows, units);
  }

  /** To 5 degrees, as a shop can hold. */
  static String toFive(double degrees) {
    return Long.toString(5 * Math.round(degrees / 5));
  }

  /** Words, or a number that is none of those below. */
  Columns<R> words(String head, Function<R, String> cell) {
    return add(head, head, false, cell);
  }

  /** A number that means the same in both systems. */
  Columns<R> number(String head, int decimals, ToDoubleFunction<R> value) {
    return words(head, r -> Amounts.number(value.applyAsDouble(r), decimals));
  }

  Columns<R> numberIfKnown(String head, int decimals, Function<R, Optional<Double>> value) {
    return words(head, r -> value.apply(r).map(v -> Amounts.number(v, decimals)).orElse(UNKNOWN));
  }

  /** A share in hundredths of a percent. */
  Columns<R> percent(String head, ToDoubleFunction<R> value) {
    return number(head, 2, value);
  }

  /** A temperature to 5 degrees. */
  Columns<R> heat(String name, ToDoubleFunction<R> celsius) {
    return heatIfKnown(name, r -> Optional.of(celsius.applyAsDouble(r)));
  }

  Columns<R> heatIfKnown(String name, Function<R, Optional<Double>> celsius) {
    return ifKnown(
        name,
        "F",
        "C",
        celsius,
        c -> toFive(Temperature.ofCelsius(c).fahrenheit()),
        Columns::toFive);
  }

  /** A small length, such as a skin's. */
  Columns<R> length(String name, ToDoubleFunction<R> millimetres) {
    return lengthIfKnown(name, r -> Optional.of(millimetres.applyAsDouble(r)));
  }

  Columns<R> lengthIfKnown(String name, Function<R, Optional<Double>> millimetres) {
    return ifKnown(
        name,
        "in",
        "mm",
        millimetres,
        mm -> Amounts.number(Length.ofMillimetres(mm).inches(), 3),
        mm -> Amounts.number(mm, 2));
  }

  /** A length of a bar. */
  Columns<R> size(String name, ToDoubleFunction<R> millimetres) {
    return ifKnown(
        name,
        "in",
        "mm",
        r -> Optional.of(millimetres.applyAsDouble(r)),
        mm -> Amounts.number(Length.ofMillimetres(mm).inches(), 2),
        mm -> Amounts.number(mm, mm < 1000 ? 1 : 0));
  }

  private Columns<R> ifKnown(
      String name,
      String usUnit,
      String metricUnit,
      Function<R, Optional<Double>> value,
      Function<Double, String> us,
      Function<Double, String> metric) {
    return both(
        name,
        usUnit,
        metricUnit,
        r -> value.apply(r).map(us).orElse(UNKNOWN),
        r -> value.apply(r).map(metric).orElse(UNKNOWN));
  }

  /** One column or two, as the units are. On a terminal the second has only its unit for a head. */
  Columns<R> both(
      String name,
      String usUnit,
      String metricUnit,
      Function<R, String> us,
      Function<R, String> metric) {
    if (units != UnitSystem.METRIC) {
      add(name + " " + usUnit, name + " " + usUnit, false, us);
    }
    String inFull = name + " " + metricUnit;
    boolean second = units == UnitSystem.BOTH;
    return units == UnitSystem.US
        ? this
        : add(second ? metricUnit : inFull, inFull, second, metric);
  }

  private Columns<R> add(String head, String name, boolean second, Function<R, String> cell) {
    columns.add(
        new Table.Column(head.strip(), name.strip(), second, rows.stream().map(cell).toList()));
    return this;
  }

  /**
   * @param caption what the table shows, said above it
   */
  Table captioned(String caption) {
    return new Table(caption, columns);
  }
}
