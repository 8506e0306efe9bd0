package seamsoak.steel;

import java.util.HashMap;
import java.util.Map;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

/** Reads {@code blade-tempers.csv}. */
final class BladeTemperTable {
  private BladeTemperTable() {}

  /** The range to temper a blade in, by id of a steel whose sheet gives that of springs. */
  static Map<String, TemperatureRange> load(DataFolder data) {
    Map<String, TemperatureRange> all = new HashMap<>();
    for (CsvTable.Row row : data.csv("blade-tempers.csv").rows()) {
      double low = row.required("temper_min_C");
      double high = row.required("temper_max_C");
      if (low > high) {
        throw new Fault(
            row.place("temper_min_C"), "temper_min_C is above temper_max_C", "it may not be");
      }
      if (all.put(row.text("steel"), new TemperatureRange(low, high)) != null) {
        throw new Fault(
            row.place("steel"), "'" + row.text("steel") + "' stands twice", "give it one line");
      }
    }
    return all;
  }
}
