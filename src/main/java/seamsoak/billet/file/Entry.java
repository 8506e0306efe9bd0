package seamsoak.billet.file;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.OldWord;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.Mistake;
import seamsoak.data.Place;

/**
 * A value of the file where it stands.
 *
 * @param value as written
 * @param name what it is called in a sentence
 * @param field its path from the top of the file, such as {@code steps[1].heats[0].at}
 * @param reading what its reading leans on
 */
record Entry(JsonValue value, String name, String field, Reading reading) {
  Place place() {
    return value.place();
  }

  Entry named(String other) {
    return new Entry(value, other, field, reading);
  }

  Entry with(Reading other) {
    return new Entry(value, name, field, other);
  }

  Entry holding(JsonValue other) {
    return new Entry(other, name, field, reading);
  }

  /** What stands under a key, if anything does. */
  Optional<Entry> member(String key) {
    return Optional.ofNullable(object().members().get(key))
        .map(member -> new Entry(member.value(), key, path(key), reading));
  }

  /** An item of a list. */
  Entry item(int index, JsonValue item, String called) {
    return new Entry(item, called, field + "[" + index + "]", reading);
  }

  /** The value as an object; {@link Fault} when it is none. */
  ObjectValue object() {
    if (value instanceof ObjectValue object) {
      return object;
    }
    throw refused(instead().orElse("it should be an object in braces"));
  }

  /** That it says otherwise what one would say in another way today. */
  void old(OldWord.Kind kind) {
    reading.oldWords().add(new OldWord(place(), kind));
  }

  /** What a word of the trade that stands here leads to. */
  Optional<String> instead() {
    return value instanceof TextValue text
        ? reading.names().trade().means(name, text.text())
        : Optional.empty();
  }

  /** That it is not what it should be. */
  Fault refused(String expected) {
    return fault(name + " is " + described(), expected);
  }

  Fault fault(String found, String expected) {
    return fault(place(), field, found, expected);
  }

  /** A fault at the key of one of its entries, or of one that is missing. */
  Fault faultAt(Place place, String key, String found, String expected) {
    return fault(place, path(key), found, expected);
  }

  private static Fault fault(Place place, String field, String found, String expected) {
    return new Fault(List.of(new Mistake(place, field, found, expected)));
  }

  private String path(String key) {
    return field.isEmpty() ? key : field + "." + key;
  }

  /** The value as a sentence repeats it. */
  String described() {
    return value instanceof TextValue text ? "'" + Fault.shown(text.text()) + "'" : value.kind();
  }
}
