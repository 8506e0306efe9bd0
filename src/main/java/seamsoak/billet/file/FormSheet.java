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
}
