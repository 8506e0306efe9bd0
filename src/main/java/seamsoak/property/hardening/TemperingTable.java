package seamsoak.property.hardening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.numeric.Polyline;
import seamsoak.source.SourceTable;
import seamsoak.unit.Temperature;

/**
 * Published tempering tables. Those of one steel are averaged; a steel without one goes by {@link
 * GrangeBaughman1956Tempering}.
 */
public final class TemperingTable {
  private static final double BAND = 2;

  /** Parameter of an hour at 100 C, where nothing has softened yet. */
  private static final double UNTEMPERED_KELVIN = 373.15;

  private final HollomonJaffe1945 law;
  private final List<TemperingSheet> sheets;

  private TemperingTable(HollomonJaffe1945 law, List<TemperingSheet> sheets) {
    this.law = law;
    this.sheets = sheets;
  }

  /** Reads {@code tempering.csv}. */
  public static TemperingTable load(DataFolder data, HollomonJaffe1945 law) {
    Map<String, List<CsvTable.Row>> groups = new LinkedHashMap<>();
    for (CsvTable.Row row : data.csv("tempering.csv").someRows()) {
      if (row.required("low_HRC") > row.required("high_HRC")) {
        throw new Fault(row.place("low_HRC"), "low_HRC is above high_HRC", "it may not be");
      }
      groups
          .computeIfAbsent(row.text("steel") + " " + row.text("sheet"), k -> new ArrayList<>())
          .add(row);
    }
    return new TemperingTable(law, groups.values().stream().map(TemperingTable::sheet).toList());
  }

  /** All tables. */
  public List<TemperingSheet> sheets() {
    return sheets;
  }

  /** The curve of a steel that has a table of its own. */
  public Optional<TemperingCurve> of(String steelId) {
    List<NavigableMap<Double, Double>> own =
        sheets.stream().filter(s -> s.steel().equals(steelId)).map(this::curve).toList();
    return own.isEmpty()
        ? Optional.empty()
        : Optional.of(new TemperingCurve(law, mean(own), BAND, "tempering-tables"));
  }

  private NavigableMap<Double, Double> curve(TemperingSheet sheet) {
    NavigableMap<Double, Double> curve = new TreeMap<>();
    sheet.quenchedHrc().ifPresent(h -> curve.put(law.parameter(UNTEMPERED_KELVIN, 1), h));
    sheet
        .points()
        .forEach(
            p ->
                curve.put(
                    law.parameter(p.celsius() + Temperature.ZERO_CELSIUS, sheet.hours()), p.hrc()));
    return curve;
  }

  /**
   * The mean of curves that do not reach equally far. Below its first point each is level; where
   * one ends, the mean goes on with the slope of the others, so that nothing jumps.
   */
  private static NavigableMap<Double, Double> mean(List<NavigableMap<Double, Double>> curves) {
    NavigableSet<Double> knots =
        curves.stream()
            .flatMap(c -> c.keySet().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    NavigableMap<Double, Double> mean = new TreeMap<>();
    double before = knots.first();
    double value =
        curves.stream().mapToDouble(c -> Polyline.at(c, knots.first())).average().orElseThrow();
    for (double knot : knots) {
      double from = before;
      value +=
          curves.stream()
              .filter(c -> c.lastKey() >= knot)
              .mapToDouble(c -> Polyline.at(c, knot) - Polyline.at(c, from))
              .average()
              .orElseThrow();
      mean.put(knot, value);
      before = knot;
    }
    return mean;
  }

  private static TemperingSheet sheet(List<CsvTable.Row> rows) {
    CsvTable.Row first = rows.get(0);
    OptionalDouble quenched = OptionalDouble.empty();
    List<TemperingSheet.Point> points = new ArrayList<>();
    for (CsvTable.Row row : rows) {
      double hrc = (row.required("low_HRC") + row.required("high_HRC")) / 2;
      OptionalDouble celsius = row.number("temper_C");
      if (celsius.isEmpty()) {
        quenched = OptionalDouble.of(hrc);
      } else {
        points.add(new TemperingSheet.Point(celsius.getAsDouble(), hrc, SourceTable.standing(row)));
      }
    }
    if (points.isEmpty()) {
      throw new Fault(first.place(), "a table without a temper", "give it a row with temper_C");
    }
    return new TemperingSheet(
        first.text("steel"),
        first.text("sheet"),
        first.required("hours"),
        quenched,
        points,
        first.text("source"));
  }
}
