package seamsoak.billet.file;

import java.util.List;
import seamsoak.data.JsonValue.ListValue;

/** A list, or its only item without brackets. */
record OneOrMore<T>(ListOf<T> list) implements Reader<List<T>> {
  @Override
  public List<T> read(Entry entry) {
    return entry.value() instanceof ListValue ? list.read(entry) : List.of(list.item().read(entry));
  }
}
