package seamsoak.page;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the bench sends.
 *
 * @param number of the text that it had shown
 * @param fields by their paths
 * @param act what a button says; blank for none
 */
record Sent(int number, Map<String, String> fields, String act) {
  private static final String NUMBER = "rev";
  private static final String ACT = "act";

  /** Begins the names of fields that only say what a button adds. */
  private static final String NEW = "new.";

  private static final String STEP = "step ";

  /** Reads a form; {@code IllegalArgumentException} for one that is none of ours. */
  static Sent of(Map<String, String> form) {
    int number =
        Asked.number(form.get(NUMBER))
            .orElseThrow(() -> new IllegalArgumentException("no number of a text"));
    Map<String, String> fields = new LinkedHashMap<>(form);
    fields.keySet().removeIf(f -> f.equals(NUMBER) || f.equals(ACT) || f.startsWith(NEW));
    String act = form.getOrDefault(ACT, "");
    if (act.matches("step [0-9]{1,3}")) {
      String at = act.substring(STEP.length());
      act = STEP + form.getOrDefault(NEW + at, "") + " " + at;
    }
    return new Sent(number, fields, act);
  }
}
