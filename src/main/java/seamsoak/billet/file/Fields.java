package seamsoak.billet.file;

import java.util.IdentityHashMap;

/** The entries of one object of the file, all of them read. */
final class Fields {
  private final Entry object;
  private final IdentityHashMap<Key<?>, Object> read;

  Fields(Entry object, IdentityHashMap<Key<?>, Object> read) {
    this.object = object;
    this.read = new IdentityHashMap<>(read);
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
