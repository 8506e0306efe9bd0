package seamsoak.billet.file;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.unit.Length;

/**
 * What steel sheet of a gauge measures, as {@code gauges.csv} has it.
 *
 * @param lengths by the number of the gauge
 */
record Gauges(Map<Integer, Length> lengths) {
  private static final Pattern WRITTEN =
      Pattern.compile(
          "\\s*#?([0-9]{1,2})\\s*-?\\s*(?:ga|gau?ge)\\.?\\s*", Pattern.CASE_INSENSITIVE);

  /** Reads {@code gauges.csv}. */
  static Gauges load(DataFolder data) {
    Map<Integer, Length> lengths = new TreeMap<>();
    for (CsvTable.Row row : data.csv("gauges.csv").someRows()) {
      double gauge = row.required("gauge");
      double inches = row.required("thickness_in");
      if (gauge != Math.rint(gauge) || gauge < 0 || gauge > 99) {
        throw new Fault(
            row.place("gauge"), gauge + " is no gauge", "give a whole number below 100");
      }
      if (!(inches > 0 && inches < 1)) {
        throw new Fault(
            row.place("thickness_in"), inches + " in is no sheet", "give less than an inch");
      }
      if (lengths.put((int) gauge, Length.ofInches(inches)) != null) {
        throw new Fault(
            row.place("gauge"), (int) gauge + " stands twice", "give each gauge one line");
      }
    }
    return new Gauges(Collections.unmodifiableMap(lengths));
  }

  /** The number in what people write, such as {@code 16 ga}; none where it is no gauge. */
  static Optional<Integer> number(String written) {
    Matcher m = WRITTEN.matcher(written.length() > 20 ? "" : written);
    return m.matches() ? Optional.of(Integer.valueOf(m.group(1))) : Optional.empty();
  }

  Optional<Length> of(int gauge) {
    return Optional.ofNullable(lengths.get(gauge));
  }

  /** Which there are, in words. */
  String known() {
    return "the gauges of sheet known here are "
        + Collections.min(lengths.keySet())
        + " to "
        + Collections.max(lengths.keySet());
  }
}
