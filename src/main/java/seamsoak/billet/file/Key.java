package seamsoak.billet.file;

import java.util.Optional;
import seamsoak.data.Fault;
import seamsoak.unit.UnitSystem;

/**
 * A key that an object of the file may have.
 *
 * @param <T> what it gives; an {@code Optional} where it may be left out
 * @param name as it stands in the file
 * @param example how its value is written, in either system
 * @param values reads the value where there is one
 * @param reader the same as what the key gives
 * @param absent what it gives when it is left out; nothing where it may not be
 */
record Key<T>(
    String name, Example example, Reader<?> values, Reader<T> reader, Optional<T> absent) {
  /** How a value is written, in US and in metric units. */
  record Example(String us, String metric) {
    /** One that is the same in both. */
    static Example of(String text) {
      return new Example(text, text);
    }
  }

  static <T> Key<T> required(String name, String example, Reader<T> values) {
    return required(name, Example.of(example), values);
  }

  static <T> Key<T> required(String name, Example example, Reader<T> values) {
    return new Key<>(name, example, values, values, Optional.empty());
  }

  static <T> Key<Optional<T>> optional(String name, String example, Reader<T> values) {
    return optional(name, Example.of(example), values);
  }

  static <T> Key<Optional<T>> optional(String name, Example example, Reader<T> values) {
    return new Key<>(
        name, example, values, e -> Optional.of(values.read(e)), Optional.of(Optional.empty()));
  }

  /** One that means the same as some value when it is left out. */
  static <T> Key<T> or(T absent, String name, String example, Reader<T> values) {
    return new Key<>(name, Example.of(example), values, values, Optional.of(absent));
  }

  /** The same, which may be left out. */
  Key<?> ifThere() {
    return optional(name, example, values);
  }

  /** What an object has under it. */
  T in(Entry object) {
    return object
        .member(name)
        .map(reader::read)
        .or(() -> absent)
        .orElseThrow(() -> missing(object));
  }

  /** That an object does not have it. */
  Fault missing(Entry object) {
    return object.faultAt(
        object.place(),
        name,
        object.name() + " has no '" + name + "'",
        "add one, such as \"" + name + "\": " + shown(object));
  }

  private String shown(Entry object) {
    boolean us = object.reading().units().filter(u -> u == UnitSystem.US).isPresent();
    return us ? example.us() : example.metric();
  }
}
