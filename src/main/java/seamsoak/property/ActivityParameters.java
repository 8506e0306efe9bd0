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
  private static final String[] TERMS = {
    "constant", "T", "T_lnT", "T2", "T3", "inv_T", "inv_T2", "inv_T3"
  };

  private final Map<String, double[]> terms;

  private ActivityParameters(Map<String, double[]> terms) {
    this.terms = terms;
  }

  public static ActivityParameters load(DataFolder data) {
    Map<String, double[]> sums = new HashMap<>();
    for (CsvTable.Row row : data.csv("activity-parameters.csv").rows()) {
      double[] sum =
          sums.computeIfAbsent(
              row.text("element") + " " + row.text("parameter"), k -> new double[TERMS.length]);
      for (int i = 0; i < TERMS.length; i++) {
        sum[i] += row.number(TERMS[i]).orElse(0);
      }
    }
    return new ActivityParameters(sums);
  }

  /** Value of a parameter, J/mol; 0 where the assessment has none. */
  double joulesPerMole(String element, String parameter, double kelvin) {
    double[] k = terms.get(element + " " + parameter);
    if (k == null) {
      return 0;
    }
    double t = kelvin;
    return k[0]
        + t * (k[1] + k[2] * Math.log(t) + t * (k[3] + t * k[4]))
        + (k[5] + (k[6] + k[7] / t) / t) / t;
  }
}
