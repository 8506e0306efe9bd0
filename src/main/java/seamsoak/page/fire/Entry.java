package seamsoak.page.fire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What somebody entered at the fire, as it was sent. What the values mean is for the reader of the
 * file to say.
 *
 * @param id drawn by whoever sent it, so that it is taken once however often it comes
 * @param billet name of the file that it is about
 * @param what of several it is
 * @param step number of the step in the file, or the one after the last for what is advised
 * @param heat which of its stays in the fire; 0 for work at the bench
 * @param kind of the step, as the file has it
 * @param plan by which the plan is known that was shown; for what is advised
 * @param replace whether it is to stand in the place of what is recorded
 * @param values all else by its name
 */
public record Entry(
    String id,
    String billet,
    What what,
    int step,
    int heat,
    String kind,
    String plan,
    boolean replace,
    Map<String, String> values) {
  private static final Pattern ID = Pattern.compile("[0-9A-Za-z_-]{16,64}");
  private static final int MOST_LETTERS = 200;

  /** What can be entered. */
  public enum What {
    /** A stay in the fire, or work at the bench. */
    DONE,
    /** That all is done up to a step. */
    UP_TO,
    /** What an etch showed. */
    LOOK
  }

  public Entry {
    values = Map.copyOf(values);
  }

  /** Reads a form; {@code IllegalArgumentException} for one that is none of ours. */
  public static Entry of(Map<String, String> form) {
    String id = form.getOrDefault("id", "");
    if (!ID.matcher(id).matches()
        || form.values().stream().anyMatch(v -> v.length() > MOST_LETTERS)) {
      throw new IllegalArgumentException("no entry");
    }
    Map<String, String> values = new LinkedHashMap<>();
    form.forEach((key, value) -> values.put(key, value.strip()));
    values.values().removeIf(String::isEmpty);
    return new Entry(
        id,
        form.getOrDefault("billet", ""),
        What.valueOf(form.getOrDefault("what", "")),
        number(form, "step"),
        number(form, "heat"),
        form.getOrDefault("kind", ""),
        form.getOrDefault("plan", ""),
        form.containsKey("replace"),
        values);
  }

  private static int number(Map<String, String> form, String key) {
    String text = form.getOrDefault(key, "0");
    if (!text.matches("[0-9]{1,4}")) {
      throw new IllegalArgumentException("no number");
    }
    return Integer.parseInt(text);
  }

  /** What was typed in a field; blank where nothing was. */
  String value(String key) {
    return values.getOrDefault(key, "");
  }

  /** Those of these keys that were filled in, which begin with a word of their own in the form. */
  Map<String, String> filled(String prefix, List<String> keys) {
    Map<String, String> all = new LinkedHashMap<>();
    for (String key : keys) {
      if (values.containsKey(prefix + key)) {
        all.put(key, values.get(prefix + key));
      }
    }
    return all;
  }
}
