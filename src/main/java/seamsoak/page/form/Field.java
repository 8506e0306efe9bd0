package seamsoak.page.form;

import java.util.List;

/**
 * A field of the bench.
 *
 * @param path of its value in the file, by which it is sent
 * @param label the key's own name, which is what faults call it
 * @param value as it stands in the file
 * @param needed whether it has to be filled in
 * @param help what it means, its default and an example
 * @param choices what may be chosen; empty where it is typed
 * @param list id of the list of names to choose from while typing; empty without one
 * @param note what is known of its value
 * @param faults what is wrong with it
 */
public record Field(
    String path,
    String label,
    String value,
    boolean needed,
    String help,
    List<String> choices,
    String list,
    String note,
    List<String> faults) {
  /** For links and labels; ids have no blanks, and brackets are a burden in a link. */
  public String id() {
    return id(path);
  }

  public static String id(String path) {
    return "at-" + path.replaceAll("\\[([0-9]+)]", ".$1");
  }

  public boolean isBlank() {
    return value.isEmpty() && faults.isEmpty();
  }
}
