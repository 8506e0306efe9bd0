package seamsoak.billet.file;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.data.JsonValue;
import seamsoak.data.Nearest;

/**
 * An object of the file: the keys that it may have, and what is made of them.
 *
 * @param keys in the order in which they are read and told
 * @param maker is asked when every key could be read, and may find that they do not go together
 */
record Form<T>(List<Key<?>> keys, Function<Fields, T> maker) implements Reader<T> {
  Form {
    keys = List.copyOf(keys);
  }

  @Override
  public T read(Entry entry) {
    Faults faults = new Faults();
    Entry meant = meant(entry, faults);
    IdentityHashMap<Key<?>, Object> read = new IdentityHashMap<>();
    for (Key<?> key : keys) {
      faults.<Object>tried(() -> key.in(meant)).ifPresent(value -> read.put(key, value));
    }
    faults.throwAny();
    return maker.apply(new Fields(entry, read));
  }

  /**
   * The object with every key that is none told, and taken for the one that it is nearest to where
   * that is missing, so that its value is looked at and nobody is told that the key is missing.
   */
  Entry meant(Entry entry, Faults faults) {
    List<String> names = keys.stream().map(Key::name).toList();
    Map<String, JsonValue.Member> there = entry.object().members();
    Map<String, JsonValue.Member> meant = new HashMap<>(there);
    there.forEach(
        (key, member) -> {
          if (!names.contains(key)) {
            Optional<String> near = Nearest.to(key, names);
            near.ifPresent(name -> meant.putIfAbsent(name, member));
            faults.add(
                entry.faultAt(
                    member.place(),
                    key,
                    entry.name() + " has no key '" + Fault.shown(key) + "'",
                    entry
                        .reading()
                        .names()
                        .trade()
                        .means("key", key)
                        .or(() -> near.map(name -> "did you mean '" + name + "'?"))
                        .orElse("the keys here are " + String.join(", ", names))));
          }
        });
    return entry.holding(new JsonValue.ObjectValue(entry.place(), meant));
  }
}
