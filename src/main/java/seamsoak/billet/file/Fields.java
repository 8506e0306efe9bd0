package seamsoak.billet.file;

import java.util.Map;

/** The entries of one object of the file, all of them read. */
final class Fields {
  private final Entry object;
  private final Map<Key<?>, Object> read;

  Fields(Entry object, Map<Key<?>, Object> read) {
    this.object = object;
    this.read = Map.copyOf(read);
  }

  /** What was read under a key of the object's form. */
  @SuppressWarnings("unchecked")
  <T> T get(Key<T> key) {
    return (T) read.get(key); // what the key's own reader gave
  }

  /** The object as it stands in the file. */
  Entry object() {
    return object;
  }

  /** What stands in the file under a key that is there. */
  Entry at(Key<?> key) {
    return object.member(key.name()).orElseThrow();
  }
}
