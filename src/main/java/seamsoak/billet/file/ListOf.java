package seamsoak.billet.file;

import java.util.ArrayList;
import java.util.List;
import seamsoak.data.Faults;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;

/**
 * A list.
 *
 * @param least items
 * @param most items
 * @param each what an item is called, with its number; blank where the list's own name says it
 * @param item reads one
 */
record ListOf<T>(int least, int most, String each, Reader<T> item) implements Reader<List<T>> {
  ListOf(int most, Reader<T> item) {
    this(most, "", item);
  }

  /** Of at least one. */
  ListOf(int most, String each, Reader<T> item) {
    this(1, most, each, item);
  }

  @Override
  public List<T> read(Entry entry) {
    Faults faults = new Faults();
    List<T> read = new ArrayList<>();
    for (Entry one : items(entry)) {
      faults.tried(() -> item.read(one)).ifPresent(read::add);
    }
    faults.throwAny();
    return List.copyOf(read);
  }

  /** The items as they stand in the file. */
  List<Entry> items(Entry entry) {
    if (!(entry.value() instanceof ListValue list)) {
      throw entry.refused(entry.instead().orElse("it should be a list in brackets"));
    }
    int count = list.items().size();
    if (count < least || count > most) {
      throw entry.fault(
          entry.name() + " has " + count + " entries", "it should have " + least + " to " + most);
    }
    List<Entry> items = new ArrayList<>();
    for (JsonValue value : list.items()) {
      int number = items.size() + 1;
      String called = each.isEmpty() ? entry.name() : each + " " + number;
      items.add(entry.item(number - 1, value, called));
    }
    return items;
  }
}
