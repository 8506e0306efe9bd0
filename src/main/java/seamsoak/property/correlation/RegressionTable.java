package seamsoak.property.correlation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Place;

/** All regressions, in the order of {@code regressions.csv}. */
public final class RegressionTable {
  private final String file;
  private final Map<String, Regression> byName = new LinkedHashMap<>();

  private RegressionTable(CsvTable table, CoefficientTable coefficients) {
    this.file = table.file();
    for (CsvTable.Row row : table.someRows()) {
      String name = row.text("correlation");
      if (byName.put(name, new Regression(coefficients.of(name), row)) != null) {
        throw new Fault(
            row.place(), Fault.shown(name) + " stands twice", "give each regression one line");
      }
    }
  }

  public static RegressionTable load(DataFolder data, CoefficientTable coefficients) {
    return new RegressionTable(data.csv("regressions.csv"), coefficients);
  }

  /** The regression of a name; {@link Fault} when the table lacks it. */
  public Regression of(String name) {
    Regression found = byName.get(name);
    if (found == null) {
      throw new Fault(Place.of(file), "no regression " + name, "the table needs its line");
    }
    return found;
  }

  /** All that give one of these quantities. */
  public List<Regression> giving(String... quantities) {
    Set<String> wanted = Set.of(quantities);
    return byName.values().stream().filter(r -> wanted.contains(r.correlation().gives())).toList();
  }
}
