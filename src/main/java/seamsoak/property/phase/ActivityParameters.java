package seamsoak.property.phase;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.Origin;
import seamsoak.source.Range;
import seamsoak.steel.Element;

/**
 * The assessed parameters of carbon in alloyed austenite, functions of temperature in J/mol, from
 * {@code activity-parameters.csv}. Lines for the same element and parameter add up.
 */
public final class ActivityParameters {
  private static final String[] COLUMNS = {
    "constant", "T", "T_lnT", "T2", "T3", "inv_T", "inv_T2", "inv_T3"
  };

  /** Number of terms of a function of temperature. */
  static final int TERMS = COLUMNS.length;

  private final Map<String, double[]> terms;
  private final Map<String, Origin> origins;

  private ActivityParameters(Map<String, double[]> terms, Map<String, Origin> origins) {
    this.terms = terms;
    this.origins = origins;
  }

  public static ActivityParameters load(DataFolder data) {
    Map<String, double[]> sums = new HashMap<>();
    Map<String, List<CsvTable.Row>> rows = new HashMap<>();
    for (CsvTable.Row row : data.csv("activity-parameters.csv").rows()) {
      rows.computeIfAbsent(row.text("element"), k -> new ArrayList<>()).add(row);
      double[] sum =
          sums.computeIfAbsent(
              row.text("element") + " " + row.text("parameter"), k -> new double[TERMS]);
      for (int i = 0; i < TERMS; i++) {
        sum[i] += row.number(COLUMNS[i]).orElse(0);
      }
    }
    Map<String, Origin> origins = new HashMap<>();
    rows.forEach((element, own) -> origins.put(element, Origin.of(own, "parameter")));
    return new ActivityParameters(sums, origins);
  }

  /** What the parameters of iron say about themselves. */
  public Correlation iron() {
    return describe("Fe", List.of(), "not at hand").orElseThrow();
  }

  /** What the parameters of an alloying element say; empty where it counts as iron. */
  public Optional<Correlation> of(Element e) {
    boolean checked = e != Element.V && e != Element.W;
    return describe(
        e.symbol(),
        LowAlloy.range(e),
        checked ? "0.006 in log10 per wt% against published alloy factors" : "not at hand");
  }

  private Optional<Correlation> describe(String element, List<Range> alloy, String error) {
    List<Range> ranges = new ArrayList<>(alloy);
    ranges.add(Correlation.celsiusRange(700, 1300));
    return Optional.ofNullable(origins.get(element))
        .map(
            o ->
                new Correlation(
                    "austenite-activity-" + element,
                    "activity of carbon in austenite, part of " + element,
                    "J/mol",
                    o.source(),
                    o.standing(),
                    ranges,
                    error,
                    o.terms(),
                    o.notes()));
  }

  /** Adds a factor times a parameter to a function; nothing where the assessment has none. */
  void add(String element, String parameter, double factor, double[] function) {
    double[] k = terms.get(element + " " + parameter);
    if (k != null) {
      for (int i = 0; i < TERMS; i++) {
        function[i] += factor * k[i];
      }
    }
  }

  /** Value of a function at a temperature, J/mol. */
  public static double value(double[] k, double kelvin) {
    double t = kelvin;
    return k[0]
        + t * (k[1] + k[2] * Math.log(t) + t * (k[3] + t * k[4]))
        + (k[5] + (k[6] + k[7] / t) / t) / t;
  }
}
