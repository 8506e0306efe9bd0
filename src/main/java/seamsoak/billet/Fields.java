package seamsoak.billet;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
import seamsoak.data.Nearest;
import seamsoak.data.Place;

/** The entries of one object of the file, all of whose keys are known. */
final class Fields {
  /** Reads one value; the name is what the value is called in an error sentence. */
  interface Reader<T> {
    T read(JsonValue value, String name);
  }

  /** How an entry is written, for the sentence that misses it. */
  private static final Map<String, String> EXAMPLES =
      Map.ofEntries(
          entry("stack", "{ \"layers\": 13, \"steels\": [...], ... }"),
          entry("layers", "13"),
          entry("steels", "[\"1084\", \"75Ni8\"]"),
          entry("steps", "[{ \"do\": \"weld\", ... }]"),
          entry("do", "\"weld\""),
          entry("heats", "[{ \"at\": \"1150 C\", \"for\": \"3 min\" }]"),
          entry("at", "\"1150 C\""),
          entry("for", "\"3 min\""),
          entry("thickness", "\"25 mm\""),
          entry("width", "\"35 mm\""),
          entry("length", "\"150 mm\""),
          entry("depth", "\"0.3 mm\""),
          entry("across", "3"),
          entry("high", "3"),
          entry("angle", "\"45 deg\""),
          entry("slice", "\"15 mm\""),
          entry("steel", "\"1008\""),
          entry("in", "\"air\""),
          entry("kind", "\"oil-fast\""),
          entry("seams", "\"restack\""),
          entry("line", "\"none\""));

  private final JsonValue.ObjectValue object;
  private final String what;

  private Fields(JsonValue.ObjectValue object, String what) {
    this.object = object;
    this.what = what;
  }

  /** The entries of an object; {@link Fault} when it is none. */
  static Fields of(JsonValue value, String what) {
    if (value instanceof JsonValue.ObjectValue object) {
      return new Fields(object, what);
    }
    throw new Fault(
        value.place(), what + " is " + Values.described(value), "it should be an object in braces");
  }

  /** The same, with every key checked against those that are known. */
  static Fields of(JsonValue value, String what, List<String> keys) {
    Fields fields = of(value, what);
    fields.object.members().forEach((key, member) -> fields.check(key, member, keys));
    return fields;
  }

  private void check(String key, JsonValue.Member member, List<String> keys) {
    if (!keys.contains(key)) {
      throw new Fault(
          member.place(),
          what + " has no key '" + Fault.shown(key) + "'",
          Nearest.to(key, keys)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("the keys here are " + String.join(", ", keys)));
    }
  }

  Place place() {
    return object.place();
  }

  Place place(String key) {
    return object.members().get(key).value().place();
  }

  <T> T required(String key, Reader<T> reader) {
    return optional(key, reader)
        .orElseThrow(
            () ->
                new Fault(
                    place(),
                    what + " has no '" + key + "'",
                    "add one, such as \"" + key + "\": " + EXAMPLES.get(key)));
  }

  <T> Optional<T> optional(String key, Reader<T> reader) {
    return Optional.ofNullable(object.members().get(key))
        .map(member -> reader.read(member.value(), key));
  }
}
