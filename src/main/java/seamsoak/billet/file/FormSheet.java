package seamsoak.billet.file;

import java.util.List;
import java.util.Optional;

/**
 * An object of a billet file as a form to fill in.
 *
 * @param title of its table in {@code BILLET.md}
 * @param keys in the order in which they are asked for
 */
public record FormSheet(String title, List<FormKey> keys) {
  public FormSheet {
    keys = List.copyOf(keys);
  }

  public Optional<FormKey> key(String name) {
    return keys.stream().filter(k -> k.name().equals(name)).findFirst();
  }

  /** The form of what stands under a key. */
  public FormSheet inside(String key) {
    return ((FormKey.Inside) key(key).orElseThrow().way()).sheet();
  }

  /** What each item of a list holds. */
  public FormSheet each(String key) {
    FormKey.Each each = (FormKey.Each) key(key).orElseThrow().way();
    return ((FormKey.Inside) each.item()).sheet();
  }

  /** The same without some keys. */
  public FormSheet without(String... names) {
    return new FormSheet(
        title, keys.stream().filter(k -> !List.of(names).contains(k.name())).toList());
  }
}
