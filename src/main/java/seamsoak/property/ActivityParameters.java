package seamsoak.property;

import java.util.HashMap;
import java.util.Map;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;

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

  private ActivityParameters(Map<String, double[]> terms) {
    this.terms = terms;
  }

  public static ActivityParameters load(DataFolder data) {
    Map<String, double[]> sums = new HashMap<>();
    for (CsvTable.Row row : data.csv("activity-parameters.csv").rows()) {
      double[] sum =
          sums.computeIfAbsent(
              row.text("element") + " " + row.text("parameter"), k -> new double[TERMS]);
      for (int i = 0; i < TERMS; i++) {
        sum[i] += row.number(COLUMNS[i]).orElse(0);
      }
    }
    return new ActivityParameters(sums);
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
  static double value(double[] k, double kelvin) {
    double t = kelvin;
    return k[0]
        + t * (k[1] + k[2] * Math.log(t) + t * (k[3] + t * k[4]))
        + (k[5] + (k[6] + k[7] / t) / t) / t;
  }
}
