package seamsoak.property.correlation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Place;

/**
 * The coefficients of all correlations, as {@code correlations.csv} has them.
 *
 * @param file its name
 * @param rows its rows by correlation
 */
public record CoefficientTable(String file, Map<String, List<CsvTable.Row>> rows) {

  public static CoefficientTable load(DataFolder data) {
    CsvTable table = data.csv("correlations.csv");
    return new CoefficientTable(
        table.file(),
        table.someRows().stream()
            .collect(
                Collectors.groupingBy(
                    r -> r.text("correlation"), LinkedHashMap::new, Collectors.toList())));
  }

  /** Names of the correlations in the table. */
  public Set<String> names() {
    return rows.keySet();
  }

  /** The coefficients of one correlation; {@link Fault} when the table lacks it. */
  public Coefficients of(String correlation) {
    List<CsvTable.Row> own = rows.get(correlation);
    if (own == null) {
      throw new Fault(
          Place.of(file), "no correlation " + correlation, "the table needs its coefficients");
    }
    Map<String, Double> values = new LinkedHashMap<>();
    for (CsvTable.Row row : own) {
      if (values.put(row.text("term"), row.required("coefficient")) != null) {
        throw new Fault(
            row.place(),
            correlation + " has the term " + row.text("term") + " twice",
            "give each term once");
      }
    }
    return new Coefficients(correlation, own.get(0), values, Origin.of(own, "term"));
  }
}
